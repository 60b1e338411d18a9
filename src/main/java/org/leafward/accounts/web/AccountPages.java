package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * Who is looking: the operator by token, or in the demo one of its invented people by
 * choice.
 */
@Controller
class AccountPages {

	private static final int PAGE = 50;

	private final People people;

	private final Viewers viewers;

	private final OperatorToken token;

	/** Addresses of those who may change rules; people only sign in in the demo. */
	private final Set<String> specialists;

	private final SecurityContextRepository contexts = new HttpSessionSecurityContextRepository();

	AccountPages(People people, Viewers viewers, OperatorToken token,
			@Value("${leafward.demo.specialists:}") Set<String> specialists) {
		this.people = people;
		this.viewers = viewers;
		this.token = token;
		this.specialists = Set.copyOf(specialists);
	}

	/**
	 * A person to choose.
	 *
	 * @param id identifier
	 * @param name the name
	 * @param more what else a reader wants to know
	 */
	record Choosable(UUID id, String name, String more) {
	}

	@GetMapping("/people")
	String people(@RequestParam(defaultValue = "0") int page, Model model) {
		demoOnly();
		List<Person> found = this.people.list(Given.page(page), PAGE);
		model.addAttribute("section", "people");
		model.addAttribute("people",
				found.stream().map((one) -> new Choosable(one.id().value(), one.name(), one.email())).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() == PAGE);
		return "accounts/people";
	}

	@PostMapping("/people/{id}")
	String actAs(@PathVariable UUID id, HttpServletRequest request, HttpServletResponse response) {
		demoOnly();
		Person person = this.people.find(new PersonId(id)).orElseThrow(() -> new NotThere("There is no such person."));
		signIn(SignedIn.person(id, person.name(), this.specialists.contains(person.email())), request, response);
		return "redirect:/";
	}

	@GetMapping("/sign-in")
	String signIn(Model model) {
		model.addAttribute("section", "sign-in");
		model.addAttribute("open", this.token.isSet());
		model.addAttribute("failed", false);
		return "accounts/sign-in";
	}

	@PostMapping("/sign-in")
	String signIn(@RequestParam(name = "token", required = false) @Nullable String given, Model model,
			HttpServletRequest request, HttpServletResponse response) {
		if (given == null || !this.token.matches(given)) {
			response.setStatus(HttpServletResponse.SC_UNAUTHORIZED);
			model.addAttribute("section", "sign-in");
			model.addAttribute("open", this.token.isSet());
			model.addAttribute("failed", true);
			return "accounts/sign-in";
		}
		signIn(SignedIn.operator(), request, response);
		return "redirect:/";
	}

	private void signIn(SignedIn known, HttpServletRequest request, HttpServletResponse response) {
		if (request.getSession(false) != null) {
			// A new identity never inherits an old session's id.
			request.changeSessionId();
		}
		SecurityContext context = SecurityContextHolder.createEmptyContext();
		context.setAuthentication(known);
		SecurityContextHolder.setContext(context);
		this.contexts.saveContext(context, request, response);
	}

	private void demoOnly() {
		if (!this.viewers.current().demo()) {
			throw new NotThere("There is no such page.");
		}
	}

}
