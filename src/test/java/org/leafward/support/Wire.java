package org.leafward.support;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;

/** A client of a local server that follows nothing and keeps nothing. */
public final class Wire {

	private static final HttpClient CLIENT = HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

	private Wire() {
	}

	/**
	 * Sends a request without a body.
	 * @param port port of the server
	 * @param method any method
	 * @param path begins with a slash
	 * @param headers names and values in turn
	 * @return the answer, whatever its status
	 */
	public static HttpResponse<byte[]> send(int port, String method, String path, String... headers) {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
			.timeout(Duration.ofSeconds(60))
			.method(method, HttpRequest.BodyPublishers.noBody());
		if (headers.length > 0) {
			request.headers(headers);
		}
		try {
			return CLIENT.send(request.build(), BodyHandlers.ofByteArray());
		}
		catch (IOException | InterruptedException ex) {
			throw new IllegalStateException(ex);
		}
	}

	/**
	 * A header of an answer.
	 * @param response the answer
	 * @param name name of the header
	 * @return its first value; null without one
	 */
	public static String header(HttpResponse<?> response, String name) {
		return response.headers().firstValue(name).orElse(null);
	}

}
