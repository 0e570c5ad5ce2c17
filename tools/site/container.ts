import { headersFor, type HostRule } from "./hostFiles";

/** A container that serves the site: nginx without rights of its own, on port 8080, behind whatever ends https. */
export const containerFile = (): string => `FROM docker.io/nginxinc/nginx-unprivileged:stable-alpine
COPY nginx.conf /etc/nginx/conf.d/default.conf
COPY site /usr/share/nginx/html
EXPOSE 8080
`;

/** nginx's settings. A location with a header of its own inherits none, so each is given all of its own. */
export function nginxFile(rules: readonly HostRule[]): string {
  const locations = rules.map(({ path }) => {
    const isExact = !path.endsWith("*");
    const prefix = path.replace(/\*$/, "");
    const headers = Object.entries(headersFor(prefix, rules));
    const lines = headers.map(([name, value]) => `    add_header ${name} ${JSON.stringify(value)} always;`);
    return `  location ${isExact ? "= " : ""}${prefix} {\n${lines.join("\n")}\n  }`;
  });
  return `server {
  listen 8080;
  root /usr/share/nginx/html;
  index index.html;
  charset utf-8;
  gzip on;
  gzip_types text/css text/javascript application/javascript application/json image/svg+xml;
${locations.join("\n")}
}
`;
}
