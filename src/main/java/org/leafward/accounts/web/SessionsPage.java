package org.leafward.accounts.web;

import jakarta.servlet.http.HttpSession;
import java.util.List;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/** Where somebody is signed in, and the end of it. */
@Controller
class SessionsPage {

	private final OpenSessions sessions;

	private final Viewers viewers;

	SessionsPage(OpenSessions sessions, Viewers viewers) {
		this.sessions = sessions;
		this.viewers = viewers;
	}

	/**
	 * A session as the page shows it.
	 *
	 * @param since when it began, UTC
	 * @param last when it was used, UTC
	 * @param here whether it is this one
	 */
	record Row(String since, String last, boolean here) {
	}

	@GetMapping("/me/sessions")
	String list(HttpSession session, Model model) {
		List<Row> rows = this.sessions.of(me())
			.stream()
			.map((one) -> new Row(one.since().toString().substring(0, 16), one.last().toString().substring(0, 16),
					one.id().equals(session.getId())))
			.toList();
		model.addAttribute("section", "me");
		model.addAttribute("sessions", rows);
		return "accounts/sessions";
	}

	@PostMapping("/me/sessions/ended")
	String endOthers(HttpSession session) {
		this.sessions.endAll(me(), session.getId());
		return "redirect:/me/sessions";
	}

	private PersonId me() {
		UUID person = this.viewers.current().person();
		if (person == null) {
			throw new NotThere("The operator token has no account of its own.");
		}
		return new PersonId(person);
	}

}
