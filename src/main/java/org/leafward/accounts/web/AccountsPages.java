package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.accounts.Granted;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The operator's view of people: who may do what, and what was done. */
@Controller
class AccountsPages {

	private static final int PAGE = 50;

	private final People people;

	private final Roles roles;

	private final AuditLog audit;

	private final OpenSessions sessions;

	AccountsPages(People people, Roles roles, AuditLog audit, OpenSessions sessions) {
		this.people = people;
		this.roles = roles;
		this.audit = audit;
		this.sessions = sessions;
	}

	/**
	 * A person with what they may do.
	 *
	 * @param id identifier
	 * @param name the name
	 * @param address their address, or why there is none
	 * @param grants each thing that they may do
	 */
	record Row(UUID id, String name, String address, List<Grant> grants) {
	}

	/**
	 * A role as the page shows it.
	 *
	 * @param role its name
	 * @param county of a specialist; empty otherwise
	 * @param words what it is called
	 */
	record Grant(String role, String county, String words) {
	}

	/**
	 * A line of the audit log.
	 *
	 * @param at when
	 * @param who who did it
	 * @param words what
	 * @param concerns whose it was; null for nobody's
	 */
	record Line(String at, String who, String words, @Nullable String concerns) {
	}

	@GetMapping("/accounts")
	String list(@RequestParam(defaultValue = "0") int page, Model model) {
		List<Person> found = this.people.list(Given.page(page), PAGE);
		model.addAttribute("section", "accounts");
		model.addAttribute("people", found.stream().map(this::row).toList());
		model.addAttribute("roles", Role.values());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() == PAGE);
		return "accounts/accounts";
	}

	private Row row(Person person) {
		Granted granted = this.roles.of(person.id());
		List<Grant> grants = granted.roles()
			.stream()
			.sorted()
			.flatMap((role) -> (role == Role.SPECIALIST)
					? granted.counties().stream().sorted().map((county) -> grant(role, county))
					: List.of(grant(role, "")).stream())
			.toList();
		String address = Optional.ofNullable(person.email())
			.map((email) -> person.confirmed() ? email : email + ", not confirmed")
			.orElse("no address");
		return new Row(person.id().value(), person.name(), address, grants);
	}

	private static Grant grant(Role role, String county) {
		return new Grant(role.name(), county, county.isEmpty() ? role.words() : role.words() + " for " + county);
	}

	@PostMapping("/accounts/{id}/roles")
	String grant(@PathVariable UUID id, @RequestParam(required = false) @Nullable String role,
			@RequestParam(defaultValue = "") String county, Model model, HttpServletResponse response) {
		PersonId person = known(id);
		try {
			Role read = Given.word("role", role, Role.class);
			this.roles.grant(person, read, county);
			this.audit.note(Deed.GRANTED_ROLE, person, grant(read, county.strip()).words());
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			model.addAttribute("wrong", ex.what() + "; " + ex.mend());
			return list(0, model);
		}
		return "redirect:/accounts";
	}

	@PostMapping("/accounts/{id}/roles/withdrawn")
	String withdraw(@PathVariable UUID id, @RequestParam(required = false) @Nullable String role,
			@RequestParam(defaultValue = "") String county) {
		PersonId person = known(id);
		Role read = Given.word("role", role, Role.class);
		this.roles.withdraw(person, read, county);
		this.audit.note(Deed.WITHDREW_ROLE, person, grant(read, county.strip()).words());
		return "redirect:/accounts";
	}

	@PostMapping("/accounts/{id}/sessions/ended")
	String endSessions(@PathVariable UUID id) {
		PersonId person = known(id);
		this.sessions.endAll(person, null);
		this.audit.note(Deed.ENDED_SESSIONS, person, "");
		return "redirect:/accounts";
	}

	@GetMapping("/audit")
	String audit(@RequestParam(defaultValue = "0") int page, Model model) {
		List<AuditLog.Entry> found = this.audit.all(Given.page(page), PAGE);
		model.addAttribute("section", "accounts");
		model.addAttribute("lines", found.stream().map(this::line).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() == PAGE);
		return "accounts/audit";
	}

	private Line line(AuditLog.Entry entry) {
		PersonId concerns = entry.concerns();
		return new Line(entry.at().toString(),
				(entry.actor() != null) ? called(entry.actor()) : "operator or somebody gone",
				entry.deed().words() + (entry.what().isEmpty() ? "" : ": " + entry.what()),
				(concerns != null && !concerns.equals(entry.actor())) ? called(concerns) : null);
	}

	private String called(PersonId id) {
		return this.people.find(id).map(Person::name).orElse("somebody gone");
	}

	private PersonId known(UUID id) {
		return this.people.find(new PersonId(id))
			.map(Person::id)
			.orElseThrow(() -> new NotThere("There is no such person."));
	}

}
