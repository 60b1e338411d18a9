package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.accounts.Granted;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** In the demo whoever looks chooses one of its invented people. */
@Controller
class DemoPeoplePage {

	private static final int PAGE = 50;

	private final People people;

	private final Roles roles;

	private final Viewers viewers;

	private final Sessions sessions;

	DemoPeoplePage(People people, Roles roles, Viewers viewers, Sessions sessions) {
		this.people = people;
		this.roles = roles;
		this.viewers = viewers;
		this.sessions = sessions;
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
		model.addAttribute("people", found.stream().filter((one) -> one.email() != null).map(this::choosable).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() == PAGE);
		return "accounts/people";
	}

	private Choosable choosable(Person person) {
		Granted granted = this.roles.of(person.id());
		String what = granted.roles().isEmpty() ? "gardener"
				: granted.roles().stream().sorted().map(Role::words).collect(Collectors.joining(", "));
		return new Choosable(person.id().value(), person.name(), granted.counties().isEmpty() ? what
				: what + " for " + granted.counties().stream().sorted().collect(Collectors.joining(" and ")));
	}

	@PostMapping("/people/{id}")
	String actAs(@PathVariable UUID id, HttpServletRequest request, HttpServletResponse response) {
		demoOnly();
		Person person = this.people.find(new PersonId(id)).orElseThrow(() -> new NotThere("There is no such person."));
		this.sessions.begin(SignedIn.person(person, this.roles.of(person.id())), request, response);
		return "redirect:/";
	}

	private void demoOnly() {
		if (!this.viewers.current().demo()) {
			throw new NotThere("There is no such page.");
		}
	}

}
