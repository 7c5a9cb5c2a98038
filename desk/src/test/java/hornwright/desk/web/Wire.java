package hornwright.desk.web;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Says to the server exactly what a test wants said, headers that no client library would send included. */
record Wire(String address) {
    record Answer(int status, List<String> headers, String body) {
        String header(String name) {
            return headers.stream()
                    .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT) + ":"))
                    .map(line -> line.substring(name.length() + 1).strip())
                    .findFirst()
                    .orElse("");
        }
    }

    Answer get(String path, String... headers) throws IOException {
        return say("GET", path, "", headers);
    }

    /** A form posted as the program's own page would. */
    Answer post(String path, String form) throws IOException {
        return say("POST", path, form, "Sec-Fetch-Site: same-origin", "Origin: " + address);
    }

    Answer say(String method, String path, String form, String... headers) throws IOException {
        URI uri = URI.create(address);
        StringBuilder request = new StringBuilder("%s %s HTTP/1.1\r\nConnection: close\r\n".formatted(method, path));
        if (Arrays.stream(headers).noneMatch(header -> header.startsWith("Host:"))) {
            request.append("Host: ").append(uri.getAuthority()).append("\r\n");
        }
        for (String header : headers) {
            request.append(header).append("\r\n");
        }
        if (method.equals("POST")) {
            request.append("Content-Type: application/x-www-form-urlencoded\r\nContent-Length: ")
                    .append(form.length())
                    .append("\r\n");
        }
        request.append("\r\n").append(form);
        try (Socket socket = new Socket(uri.getHost(), uri.getPort())) {
            socket.getOutputStream().write(request.toString().getBytes(StandardCharsets.UTF_8));
            String whole = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            String[] parts = whole.split("\r\n\r\n", 2);
            List<String> lines = List.of(parts[0].split("\r\n"));
            return new Answer(
                    Integer.parseInt(lines.getFirst().split(" ")[1]),
                    lines.subList(1, lines.size()),
                    parts.length > 1 ? parts[1] : "");
        }
    }
}
