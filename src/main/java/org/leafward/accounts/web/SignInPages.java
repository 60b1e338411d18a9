package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.signin.LinkMail;
import org.leafward.accounts.signin.OneTimeLinks;
import org.leafward.accounts.signin.OperatorToken;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.measure.BadInput;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Signing in: by a link to an address, or with the operator token. */
@Controller
class SignInPages {

	/** What stands in a link. */
	private static final String SECRET = "[A-Za-z0-9_-]{43}";

	private final OperatorToken token;

	private final LinkMail mail;

	private final Doors doors;

	private final Sessions sessions;

	SignInPages(OperatorToken token, LinkMail mail, Doors doors, Sessions sessions) {
		this.token = token;
		this.mail = mail;
		this.doors = doors;
		this.sessions = sessions;
	}

	@GetMapping("/sign-in")
	String signIn(@RequestParam(required = false) @Nullable String failed, Model model) {
		model.addAttribute("linkFailed", failed != null);
		return page(model, "", false);
	}

	private String page(Model model, @Nullable String email, boolean failed) {
		model.addAttribute("section", "sign-in");
		model.addAttribute("open", this.token.isSet());
		model.addAttribute("links", this.mail.works());
		model.addAttribute("doors", this.doors.all());
		model.addAttribute("email", email);
		model.addAttribute("failed", failed);
		return "accounts/sign-in";
	}

	@PostMapping("/sign-in")
	String signIn(@RequestParam(name = "token", required = false) @Nullable String given, Model model,
			HttpServletRequest request, HttpServletResponse response) {
		if (given == null || !this.token.matches(given)) {
			response.setStatus(HttpServletResponse.SC_UNAUTHORIZED);
			return page(model, "", true);
		}
		this.sessions.begin(SignedIn.operator(), request, response);
		return "redirect:/";
	}

	/** Reached only when no link is sent; see {@link LinkRequests}. */
	@PostMapping("/sign-in/link")
	String noLink(@RequestParam(required = false) @Nullable String email, HttpServletRequest request,
			HttpServletResponse response, Model model) {
		if (request.getAttribute(LinkRequests.WAIT) instanceof Long wait) {
			response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(wait));
			response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
			model.addAttribute("wait", (wait + 59) / 60);
		}
		else {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			model.addAttribute("wrong", (request.getAttribute(LinkRequests.WRONG) instanceof BadInput bad)
					? bad.what() + "; " + bad.mend() : null);
		}
		return page(model, email, false);
	}

	@GetMapping("/sign-in/sent")
	String sent(HttpServletRequest request, Model model) {
		HttpSession session = request.getSession(false);
		Object shown = (session != null) ? session.getAttribute(LinkMail.SHOWN) : null;
		if (session != null && shown != null) {
			session.removeAttribute(LinkMail.SHOWN);
		}
		model.addAttribute("section", "sign-in");
		model.addAttribute("shown", shown);
		model.addAttribute("minutes", OneTimeLinks.SIGN_IN.toMinutes());
		return "accounts/sent";
	}

	/**
	 * Only shows a button: programs that look at mail before people do follow links, and
	 * would use this one up.
	 */
	@GetMapping("/sign-in/once")
	String once(@RequestParam(name = "token", required = false) @Nullable String given, HttpServletResponse response,
			Model model) {
		// The address has the secret in it.
		response.setHeader("Referrer-Policy", "no-referrer");
		response.setHeader("X-Robots-Tag", "noindex");
		model.addAttribute("section", "sign-in");
		model.addAttribute("token", (given != null && given.matches(SECRET)) ? given : null);
		return "accounts/once";
	}

}
