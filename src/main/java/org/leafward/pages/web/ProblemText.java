package org.leafward.pages.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;

/**
 * Writes a problem detail (RFC 9457) where no controller and no converter is at hand: in
 * filters and in the server itself.
 */
final class ProblemText {

	private static final JsonMapper JSON = JsonMapper.shared();

	private ProblemText() {
	}

	static void write(HttpServletResponse response, HttpStatus status, Trouble trouble) throws IOException {
		byte[] text = of(status, trouble);
		response.setStatus(status.value());
		response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
		response.setContentLength(text.length);
		response.getOutputStream().write(text);
	}

	static byte[] of(HttpStatus status, Trouble trouble) {
		ObjectNode problem = JSON.createObjectNode();
		problem.put("title", status.getReasonPhrase());
		problem.put("status", status.value());
		problem.put("detail", trouble.what());
		put(problem, "where", trouble.where());
		put(problem, "mend", trouble.mend());
		return JSON.writeValueAsString(problem).getBytes(StandardCharsets.UTF_8);
	}

	private static void put(ObjectNode problem, String name, @Nullable String value) {
		if (value != null) {
			problem.put(name, value);
		}
	}

}
