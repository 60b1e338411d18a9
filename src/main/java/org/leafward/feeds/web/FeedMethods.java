package org.leafward.feeds.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers 405 to everything but GET and HEAD below {@code /f/} and {@code /c/}, where
 * public calendars lie. Calendar clients try PROPFIND and OPTIONS to see whether they
 * speak to a CalDAV server; without this the security filter would answer 400 to one and
 * the dispatcher 200 to the other.
 */
@Configuration(proxyBeanMethods = false)
class FeedMethods {

	/** Before Spring Security, which is at -100. */
	private static final int ORDER = Ordered.HIGHEST_PRECEDENCE + 50;

	private static final Set<String> ALLOWED = Set.of("GET", "HEAD");

	@Bean
	FilterRegistrationBean<OncePerRequestFilter> feedMethodsFilter() {
		FilterRegistrationBean<OncePerRequestFilter> registration = new FilterRegistrationBean<>(filter());
		registration.addUrlPatterns("/f/*", "/c/*");
		registration.setOrder(ORDER);
		return registration;
	}

	static OncePerRequestFilter filter() {
		return new OncePerRequestFilter() {
			@Override
			protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
					throws ServletException, IOException {
				if (ALLOWED.contains(request.getMethod())) {
					chain.doFilter(request, response);
				}
				else {
					refuse(response);
				}
			}
		};
	}

	private static void refuse(HttpServletResponse response) throws IOException {
		byte[] words = "This calendar can only be read.\n".getBytes(StandardCharsets.UTF_8);
		response.setStatus(HttpServletResponse.SC_METHOD_NOT_ALLOWED);
		response.setHeader(HttpHeaders.ALLOW, "GET, HEAD");
		response.setContentType("text/plain; charset=utf-8");
		response.setContentLength(words.length);
		response.getOutputStream().write(words);
	}

}
