package org.leafward.pages;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/**
 * The full page or a part of it from one controller method. Pages work without script;
 * where htmx runs, it asks for parts by the header {@code HX-Request} and obeys headers
 * of the answer (htmx 2, reference of headers).
 */
public final class Fragments {

	/** The region of every such page that says what happened. */
	public static final String SAID = "#said";

	private static final String ASKED = "HX-Request";

	private Fragments() {
	}

	/**
	 * Whether a part of a page is asked for. Marks the answer as one that hangs on it, so
	 * that no cache gives a part to somebody who wants the page.
	 * @param request the request
	 * @param response its answer
	 * @return false for a page
	 */
	public static boolean wanted(HttpServletRequest request, HttpServletResponse response) {
		if (!response.getHeaders(HttpHeaders.VARY).contains(ASKED)) {
			response.addHeader(HttpHeaders.VARY, ASKED);
		}
		return "true".equals(request.getHeader(ASKED));
	}

	/**
	 * Has the answer put into another part of the page than was asked for.
	 * @param response the answer
	 * @param selector CSS selector of the element that takes it as its content
	 */
	public static void into(HttpServletResponse response, String selector) {
		response.setHeader("HX-Retarget", selector);
		response.setHeader("HX-Reswap", "innerHTML");
	}

	/**
	 * Answers so that the whole page moves on.
	 * @param request the request
	 * @param response the answer, 401
	 * @param path where to, from the root of the server
	 */
	public static void leave(HttpServletRequest request, HttpServletResponse response, String path) {
		response.setStatus(HttpStatus.UNAUTHORIZED.value());
		response.setHeader("HX-Redirect", request.getContextPath() + path);
	}

}
