package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;

/**
 * Refuses calls of the API: the challenge by RFC 6750, section 3, the body by RFC 9457.
 */
final class ApiRefusals implements AuthenticationEntryPoint, AccessDeniedHandler {

	/** Attribute of a request whose token can't be used. */
	static final String PROBLEM = ApiRefusals.class.getName() + ".PROBLEM";

	private static final String CHALLENGE = "Bearer realm=\"Leafward\"";

	private static final String MAKE_ONE = "make a token under My account, Tokens, and send it as Authorization: "
			+ "Bearer followed by the token; the operator uses the value of LEAFWARD_OPERATOR_TOKEN";

	/** What is wrong with the token of a request. */
	enum Problem {

		/** Nobody knows it, or it no longer works. */
		INVALID_TOKEN,

		/** There are several. */
		INVALID_REQUEST

	}

	@Override
	public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException ex)
			throws IOException {
		Object problem = request.getAttribute(PROBLEM);
		if (problem == Problem.INVALID_REQUEST) {
			refuse(response, HttpStatus.BAD_REQUEST, CHALLENGE + ", error=\"invalid_request\"",
					"The call has several headers Authorization.", "send one of them");
		}
		else if (problem == Problem.INVALID_TOKEN) {
			refuse(response, HttpStatus.UNAUTHORIZED, CHALLENGE + ", error=\"invalid_token\"",
					"The token is not known, has expired or was revoked.", MAKE_ONE);
		}
		else {
			// Who sent no token is told of no error.
			refuse(response, HttpStatus.UNAUTHORIZED, CHALLENGE, "This address needs a token.", MAKE_ONE);
		}
	}

	@Override
	public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException ex)
			throws IOException {
		ApiNeeds needs = ApiNeeds.of(request);
		String scope = needs.scope().code();
		if (SecurityContextHolder.getContext().getAuthentication() instanceof SignedIn known
				&& !known.holds(needs.scope())) {
			refuse(response, HttpStatus.FORBIDDEN,
					"%s, error=\"insufficient_scope\", scope=\"%s\"".formatted(CHALLENGE, scope),
					"The token lacks the scope %s.".formatted(scope),
					"make another with this scope under My account, Tokens");
		}
		else {
			refuse(response, HttpStatus.FORBIDDEN, null, (needs.who() == ApiNeeds.Who.SPECIALIST)
					? "Only specialists and the operator may do this." : "Only the operator may do this.",
					"ask the operator of this server");
		}
	}

	private static void refuse(HttpServletResponse response, HttpStatus status, @Nullable String challenge,
			String detail, String mend) throws IOException {
		response.setStatus(status.value());
		if (challenge != null) {
			response.setHeader(HttpHeaders.WWW_AUTHENTICATE, challenge);
		}
		response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
		response.setCharacterEncoding(StandardCharsets.UTF_8.name());
		// All words are ours and need no escaping.
		response.getWriter().write("""
				{"type":"about:blank","title":"%s","status":%d,"detail":"%s",\
				"where":"header Authorization","mend":"%s"}
				""".formatted(status.getReasonPhrase(), status.value(), detail, mend));
	}

}
