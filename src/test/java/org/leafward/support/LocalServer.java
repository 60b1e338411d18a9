package org.leafward.support;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * An HTTP server on this machine whose answers are scripted, and which remembers what it
 * was asked. Answers are found by the path alone.
 */
public final class LocalServer implements AutoCloseable {

	private final HttpServer server;

	private final ExecutorService threads = Executors.newCachedThreadPool();

	private final CountDownLatch closed = new CountDownLatch(1);

	private final Map<String, Answer> answers = new ConcurrentHashMap<>();

	private final List<String> asked = new CopyOnWriteArrayList<>();

	private final List<String> userAgents = new CopyOnWriteArrayList<>();

	private LocalServer(HttpServer server) {
		this.server = server;
	}

	/** What is sent back. */
	@FunctionalInterface
	public interface Answer {

		void send(HttpExchange exchange) throws IOException;

	}

	public static LocalServer start() {
		try {
			HttpServer http = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
			LocalServer local = new LocalServer(http);
			http.setExecutor(local.threads);
			http.createContext("/", local::handle);
			http.start();
			return local;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** An address on this machine where nothing listens. */
	public static URI nobody() {
		try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
			return URI.create("http://127.0.0.1:" + socket.getLocalPort());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private void handle(HttpExchange exchange) throws IOException {
		try (exchange) {
			this.asked.add(exchange.getRequestURI().toString());
			this.userAgents.add(exchange.getRequestHeaders().getFirst("User-Agent"));
			this.answers.getOrDefault(exchange.getRequestURI().getPath(), status(404)).send(exchange);
		}
	}

	public URI address(String path) {
		return URI.create("http://127.0.0.1:" + this.server.getAddress().getPort() + path);
	}

	public LocalServer on(String path, Answer answer) {
		this.answers.put(path, answer);
		return this;
	}

	/** Path and query of each request, in order. */
	public List<String> asked() {
		return this.asked;
	}

	public List<String> userAgents() {
		return this.userAgents;
	}

	public static Answer text(String type, String body) {
		return (exchange) -> {
			byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
			exchange.getResponseHeaders().set("Content-Type", type);
			exchange.sendResponseHeaders(200, bytes.length == 0 ? -1 : bytes.length);
			exchange.getResponseBody().write(bytes);
		};
	}

	public static Answer status(int status, String... headers) {
		return (exchange) -> {
			for (int at = 0; at < headers.length; at += 2) {
				exchange.getResponseHeaders().set(headers[at], headers[at + 1]);
			}
			exchange.sendResponseHeaders(status, -1);
		};
	}

	/** Says how long the body is, then closes in the middle of it. */
	public static Answer brokenOff(String type, String body) {
		return (exchange) -> {
			byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
			exchange.getResponseHeaders().set("Content-Type", type);
			exchange.sendResponseHeaders(200, bytes.length);
			exchange.getResponseBody().write(bytes, 0, bytes.length / 2);
			exchange.getResponseBody().flush();
		};
	}

	/** Sends more than anybody asked for, without saying how much. */
	public static Answer flood(String type, int bytes) {
		return (exchange) -> {
			exchange.getResponseHeaders().set("Content-Type", type);
			exchange.sendResponseHeaders(200, 0);
			byte[] block = new byte[1024];
			OutputStream out = exchange.getResponseBody();
			for (int sent = 0; sent < bytes; sent += block.length) {
				out.write(block);
			}
		};
	}

	/** Sends nothing until the server is closed. */
	public Answer silence() {
		return (exchange) -> awaitEnd();
	}

	/** Sends the head and the first byte, then nothing until the server is closed. */
	public Answer trickle(String type) {
		return (exchange) -> {
			exchange.getResponseHeaders().set("Content-Type", type);
			exchange.sendResponseHeaders(200, 1000);
			exchange.getResponseBody().write('x');
			exchange.getResponseBody().flush();
			awaitEnd();
		};
	}

	private void awaitEnd() {
		try {
			this.closed.await();
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public void close() {
		this.closed.countDown();
		this.server.stop(0);
		this.threads.shutdownNow();
	}

}
