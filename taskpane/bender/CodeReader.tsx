import { useEffect, useRef, useState } from "react";
import decodeQR from "qr/decode.js";
import { readLabel, type PieceLabel } from "../../src/shop/ticket/pieceLabel";
import { attempt } from "../components/attempt";
import { benderStrings as t } from "./benderStrings";

/** Between two looks at the camera's picture [ms]. */
const PAUSE = 150;
/** A picture is looked at so wide [px]: enough for a code that fills a quarter of it. */
const WIDTH = 640;

/** Reads the code of a ticket with the camera, where the device has one. */
export function CodeReader({ read }: { read(label: PieceLabel): void }) {
  const [on, setOn] = useState(false);
  const [problem, setProblem] = useState("");
  // TypeScript takes it for always there; without a safe connection it is not.
  const devices = (globalThis.navigator as Navigator | undefined)?.mediaDevices as MediaDevices | undefined;
  if (!devices) return null;
  return (
    <div className="rlb-camera">
      <button type="button" onClick={() => (setProblem(""), setOn(!on))}>
        {on ? t.stopReading : t.readCode}
      </button>
      {on && (
        <Camera
          devices={devices}
          read={(label) => (setOn(false), read(label))}
          fail={(why) => (setOn(false), setProblem(why))}
          say={setProblem}
        />
      )}
      {problem && <p role="alert">{problem}</p>}
    </div>
  );
}

function Camera({
  devices,
  read,
  fail,
  say,
}: {
  devices: MediaDevices;
  read(label: PieceLabel): void;
  fail(why: string): void;
  say(words: string): void;
}) {
  const video = useRef<HTMLVideoElement>(null);
  const told = useRef({ read, fail, say });
  told.current = { read, fail, say };
  useEffect(() => {
    let stopped = false;
    let stream: MediaStream | undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const look = () => {
      if (stopped || !video.current) return;
      const text = textIn(video.current);
      const label = text === undefined ? undefined : attempt(() => readLabel(text));
      if (label?.value) return told.current.read(label.value);
      if (label?.problem) told.current.say(label.problem);
      timer = setTimeout(look, PAUSE);
    };
    const begin = async () => {
      stream = await devices.getUserMedia({ video: { facingMode: "environment" } });
      if (stopped || !video.current) return stream.getTracks().forEach((track) => track.stop());
      video.current.srcObject = stream;
      await video.current.play();
      look();
    };
    begin().catch((error: unknown) => {
      if (!stopped) told.current.fail(t.noCamera(error instanceof Error ? `${error.message}.` : ""));
    });
    return () => {
      stopped = true;
      clearTimeout(timer);
      stream?.getTracks().forEach((track) => track.stop());
    };
  }, [devices]);
  return (
    <>
      <p>{t.reading}</p>
      <video ref={video} muted playsInline />
    </>
  );
}

/** The text of a code in the camera's picture; undefined where there is none to be read. */
function textIn(video: HTMLVideoElement): string | undefined {
  if (video.videoWidth === 0) return undefined;
  const canvas = document.createElement("canvas");
  canvas.width = WIDTH;
  canvas.height = Math.round((WIDTH * video.videoHeight) / video.videoWidth);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) return undefined;
  context.drawImage(video, 0, 0, canvas.width, canvas.height);
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
  try {
    return decodeQR({ data, width, height });
  } catch {
    // No code in this picture: the next one may have it.
    return undefined;
  }
}
