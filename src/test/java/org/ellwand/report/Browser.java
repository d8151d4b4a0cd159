package org.ellwand.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A headless Chromium, spoken to over its debugging socket. Only what the tests of the page need. */
final class Browser implements AutoCloseable {
    private static final Pattern SOCKET = Pattern.compile("DevTools listening on ws://([^/]+)/");
    private static final Pattern PAGE = Pattern.compile("\"webSocketDebuggerUrl\": \"(ws://[^\"]+/page/[^\"]+)\"");
    private static final Pattern VALUE = Pattern.compile("\"value\":(?:\"((?:[^\"\\\\]|\\\\.)*)\"|([^,}]+))");
    private static final long PATIENCE_S = 30;

    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<String> messages = new LinkedBlockingQueue<>();
    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private final List<String> requests = new CopyOnWriteArrayList<>();
    private int last;

    /** Where Chromium is on this machine; absent: it is not. */
    static Optional<Path> installed() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser", "google-chrome")
                        .map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    Browser(Path program, Path profile) throws Exception {
        process = new ProcessBuilder(
                        program.toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectErrorStream(true)
                .start();
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(page(host()), new Listener())
                .get(PATIENCE_S, TimeUnit.SECONDS);
        for (String domain : List.of("Page", "Log", "Runtime", "Network")) {
            send(domain + ".enable", "{}");
        }
    }

    private String host() throws IOException {
        BufferedReader output =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = output.readLine(); line != null; line = output.readLine()) {
            Matcher found = SOCKET.matcher(line);
            if (found.find()) {
                return found.group(1);
            }
        }
        throw new IOException("the browser ended without opening its socket");
    }

    private static URI page(String host) throws IOException, InterruptedException {
        HttpRequest list =
                HttpRequest.newBuilder(URI.create("http://" + host + "/json")).build();
        Matcher found = PAGE.matcher(HttpClient.newHttpClient()
                .send(list, HttpResponse.BodyHandlers.ofString())
                .body());
        if (!found.find()) {
            throw new IOException("the browser shows no page");
        }
        return URI.create(found.group(1));
    }

    /** Opens a page and waits until it is loaded. */
    void open(Path page) throws InterruptedException {
        send("Page.navigate", "{\"url\":\"" + page.toUri() + "\"}");
        for (int i = 0;
                i < 100 && !evaluate("location.href + document.readyState").endsWith("htmlcomplete");
                i++) {
            Thread.sleep(50);
        }
    }

    /** What a promise comes to, as text. */
    String await(String promise) throws InterruptedException {
        String answer = send(
                "Runtime.evaluate",
                "{\"awaitPromise\":true,\"expression\":" + JsonMapper.shared().writeValueAsString(promise) + "}");
        JsonNode value = JsonMapper.shared().readTree(answer).at("/result/result/value");
        if (value.isMissingNode()) {
            throw new IllegalStateException(answer);
        }
        return value.asString();
    }

    /** {@code light} or {@code dark}. */
    void colours(String scheme) throws InterruptedException {
        send(
                "Emulation.setEmulatedMedia",
                "{\"features\":[{\"name\":\"prefers-color-scheme\",\"value\":\"" + scheme + "\"}]}");
    }

    /** What an expression comes to, as text. */
    String evaluate(String expression) throws InterruptedException {
        String quoted = expression.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", " ");
        String answer = send("Runtime.evaluate", "{\"expression\":\"String(" + quoted + ")\"}");
        Matcher found = VALUE.matcher(answer);
        if (!found.find()) {
            throw new IllegalStateException(answer);
        }
        return found.group(1) == null ? found.group(2) : found.group(1);
    }

    void size(int width, int height) throws InterruptedException {
        send(
                "Emulation.setDeviceMetricsOverride",
                "{\"width\":" + width + ",\"height\":" + height + ",\"deviceScaleFactor\":1,\"mobile\":false}");
    }

    /** {@code screen} or {@code print}. */
    void medium(String medium) throws InterruptedException {
        send("Emulation.setEmulatedMedia", "{\"media\":\"" + medium + "\"}");
    }

    /** Errors and warnings of the console. */
    List<String> complaints() {
        return complaints;
    }

    /** Addresses that were asked for. */
    List<String> requests() {
        return requests;
    }

    String send(String method, String parameters) throws InterruptedException {
        int id = ++last;
        socket.sendText("{\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":" + parameters + "}", true);
        for (String message = next(); ; message = next()) {
            if (message.startsWith("{\"id\":" + id + ",")) {
                return message;
            }
        }
    }

    private String next() throws InterruptedException {
        String message = messages.poll(PATIENCE_S, TimeUnit.SECONDS);
        if (message == null) {
            throw new IllegalStateException("the browser does not answer");
        }
        return message;
    }

    @Override
    public void close() throws InterruptedException {
        socket.abort();
        process.destroy();
        if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
    }

    private final class Listener implements WebSocket.Listener {
        private final StringBuilder part = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence text, boolean whole) {
            part.append(text);
            if (whole) {
                take(part.toString());
                part.setLength(0);
            }
            from.request(1);
            return java.util.concurrent.CompletableFuture.completedFuture(text);
        }

        private void take(String message) {
            if (message.contains("\"method\":\"Log.entryAdded\"")
                    || message.contains("\"method\":\"Runtime.exceptionThrown\"")
                    || message.contains("\"method\":\"Runtime.consoleAPICalled\"")) {
                complaints.add(message);
            } else if (message.contains("\"method\":\"Network.requestWillBeSent\"")) {
                Matcher url = Pattern.compile("\"url\":\"([^\"]+)\"").matcher(message);
                requests.add(url.find() ? url.group(1) : message);
            } else if (message.startsWith("{\"id\":")) {
                messages.add(message);
            }
        }
    }
}
