package org.leafward.pages.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.catalina.connector.ClientAbortException;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.pages.Fragments;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.NestedExceptionUtils;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.ModelAndView;

/**
 * Answers what controllers could not: below {@code /api/} with problem details (RFC
 * 9457), elsewhere with a page. Comes before the handler of
 * {@code spring.mvc.problemdetails}, which would send problem details to browsers too.
 */
@ControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class ErrorAnswers {

	private static final Logger logger = LoggerFactory.getLogger(ErrorAnswers.class);

	/** Of our things (RFC 9562, section 4), and of stations, which are short. */
	private static final Pattern IDENTIFIER = Pattern
		.compile("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}|[A-Z0-9]{1,11}");

	private final PageAttributes attributes;

	ErrorAnswers(PageAttributes attributes) {
		this.attributes = attributes;
	}

	@ExceptionHandler
	Object answer(Exception ex, HttpServletRequest request, HttpServletResponse response) {
		Trouble trouble = Trouble.of(ex);
		if (trouble.status().isSameCodeAs(HttpStatus.SERVICE_UNAVAILABLE)
				|| trouble.status().isSameCodeAs(HttpStatus.INSUFFICIENT_STORAGE)) {
			// No defect of ours: one line says it all.
			logger.warn("{} {} was answered with {}: {}", request.getMethod(), address(request), trouble.status(),
					NestedExceptionUtils.getMostSpecificCause(ex).getMessage());
		}
		else if (trouble.status().is5xxServerError()) {
			logger.error("{} {} was answered with {}", request.getMethod(), address(request), trouble.status(), ex);
		}
		trouble.headers().forEach((name, values) -> values.forEach((value) -> response.addHeader(name, value)));
		return PageAttributes.forProgram(request) ? problem(trouble, ex) : page(trouble, request, response);
	}

	/**
	 * The pattern of an address and the identifiers in it. Whatever else stands in an
	 * address may be a secret, and is written nowhere.
	 */
	private static String address(HttpServletRequest request) {
		String address = String.valueOf(request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE));
		if (request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE) instanceof Map<?, ?> parts) {
			for (Map.Entry<?, ?> part : parts.entrySet()) {
				String value = String.valueOf(part.getValue());
				if (IDENTIFIER.matcher(value).matches()) {
					address = address.replace("{%s}".formatted(part.getKey()), value);
				}
			}
		}
		return address;
	}

	/** Security's own filter answers these. */
	@ExceptionHandler({ AccessDeniedException.class, AuthenticationException.class })
	void leave(RuntimeException ex) {
		throw ex;
	}

	/** Whoever asked is gone; there is nobody to answer. */
	@ExceptionHandler({ AsyncRequestNotUsableException.class, ClientAbortException.class })
	@Nullable ModelAndView gone(Exception ex) {
		logger.debug("the connection was closed before the answer was written", ex);
		return null;
	}

	/** Where several things can't be used, all of them stand beside the first. */
	private static ResponseEntity<ProblemDetail> problem(Trouble trouble, Exception ex) {
		ResponseEntity<ProblemDetail> problem = problem(trouble);
		ProblemDetail body = problem.getBody();
		if (body != null && ex instanceof BadInput bad && bad.all().size() > 1) {
			body.setProperty("problems",
					bad.all()
						.stream()
						.map((one) -> Map.of("detail", one.what(), "where", one.where(), "mend", one.mend()))
						.toList());
		}
		return problem;
	}

	static ResponseEntity<ProblemDetail> problem(Trouble trouble) {
		ProblemDetail problem = ProblemDetail.forStatusAndDetail(trouble.status(), trouble.what());
		if (trouble.where() != null) {
			problem.setProperty("where", trouble.where());
		}
		if (trouble.mend() != null) {
			problem.setProperty("mend", trouble.mend());
		}
		return ResponseEntity.status(trouble.status()).contentType(MediaType.APPLICATION_PROBLEM_JSON).body(problem);
	}

	/** Where a part of a page was asked for, its words go where the page says things. */
	ModelAndView page(Trouble trouble, HttpServletRequest request, HttpServletResponse response) {
		boolean part = Fragments.wanted(request, response);
		if (part) {
			Fragments.into(response, Fragments.SAID);
		}
		ModelAndView page = new ModelAndView(part ? "fragments :: wrong" : "error", trouble.status());
		page.addObject("what", trouble.what());
		page.addObject("where", trouble.where());
		page.addObject("mend", trouble.mend());
		page.addObject("status", trouble.status().value());
		page.addObject("viewer", this.attributes.viewer());
		page.addObject("formats", this.attributes.formats());
		return page;
	}

}
