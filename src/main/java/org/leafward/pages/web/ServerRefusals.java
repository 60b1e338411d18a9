package org.leafward.pages.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;

import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;

/**
 * What the server itself refuses never reaches a filter: encoded slashes and NULs,
 * headers that are too long. Instead of the server's own page these get the same words as
 * everything else, as problem details or plain text.
 */
@Configuration(proxyBeanMethods = false)
class ServerRefusals {

	@Bean
	@Order(Ordered.LOWEST_PRECEDENCE)
	WebServerFactoryCustomizer<TomcatServletWebServerFactory> plainRefusals() {
		return (server) -> server
			.addContextCustomizers((context) -> context.getParent().getPipeline().addValve(new PlainRefusal()));
	}

	/** Comes last in the host's pipeline, so it reports first. */
	static final class PlainRefusal extends ErrorReportValve {

		@Override
		protected void report(Request request, Response response, @Nullable Throwable thrown) {
			int code = response.getStatus();
			if (code < 400 || response.getContentWritten() > 0 || !response.setErrorReported()) {
				return;
			}
			HttpStatus status = HttpStatus.resolve(code);
			Trouble trouble = Trouble.of((status != null) ? status : HttpStatus.BAD_REQUEST);
			try {
				SecretAddresses.mark(response);
				String path = request.getRequestURI();
				if (path == null || UnhandledErrors.forProgram(path)) {
					ProblemText.write(response, (status != null) ? status : HttpStatus.BAD_REQUEST, trouble);
				}
				else {
					byte[] words = (trouble.what() + ".\n").getBytes(StandardCharsets.UTF_8);
					response.setContentType(MediaType.TEXT_PLAIN_VALUE + ";charset=utf-8");
					response.setContentLength(words.length);
					response.getOutputStream().write(words);
				}
				response.finishResponse();
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		}

	}

}
