package org.leafward.reminders.web;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.OtherMails;
import org.leafward.accounts.OtherMails.Letter;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessagePage;
import org.leafward.reminders.Outbox;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The mails that were made, newest first, and each of them to read. */
@Controller
class OutboxPage {

	private static final int SIZE = 25;

	private final Outbox outbox;

	private final ObjectProvider<OtherMails> others;

	private final Viewers viewers;

	private final People people;

	OutboxPage(Outbox outbox, ObjectProvider<OtherMails> others, Viewers viewers, People people) {
		this.outbox = outbox;
		this.others = others;
		this.viewers = viewers;
		this.people = people;
	}

	@GetMapping("/outbox")
	String list(@RequestParam(defaultValue = "0") int page, Model model) {
		Viewer viewer = this.viewers.current();
		ZoneId zone = zone(viewer);
		MessagePage mails = page(viewer, page);
		model.addAttribute("mails", mails.mails().stream().map((mail) -> MessageRow.of(mail, zone)).toList());
		model.addAttribute("others", (page == 0) ? others(viewer, zone) : List.of());
		model.addAttribute("everybody", viewer.operator());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", mails.more());
		model.addAttribute("section", "outbox");
		return "reminders/outbox";
	}

	@GetMapping("/outbox/{id}")
	String mail(@PathVariable String id, Model model) {
		Viewer viewer = this.viewers.current();
		Optional<Letter> other = this.others.stream()
			.flatMap((module) -> module.find(identifier(id)).stream())
			.filter((found) -> found.person().value().equals(viewer.person()))
			.findFirst();
		if (other.isPresent()) {
			model.addAttribute("section", "outbox");
			model.addAttribute("mail", MessageRow.of(other.get(), zone(viewer)));
			return "reminders/mail";
		}
		Message mail = this.outbox.find(identifier(id))
			.filter((found) -> viewer.mayOpen(found.person().value()))
			.orElseThrow(() -> new NotThere("There is no such mail."));
		model.addAttribute("section", "outbox");
		MessageRow row = MessageRow.of(mail, zone(viewer));
		model.addAttribute("mail", mail.person().value().equals(viewer.person()) ? row : row.forOthers());
		return "reminders/mail";
	}

	/** The latest that other modules wrote. */
	private List<MessageRow> others(Viewer viewer, ZoneId zone) {
		UUID person = viewer.person();
		return (person == null) ? List.of()
				: this.others.stream()
					.flatMap((module) -> module.newest(new PersonId(person), SIZE).stream())
					.sorted(Comparator.comparing(Letter::writtenAt).reversed())
					.limit(SIZE)
					.map((letter) -> MessageRow.of(letter, zone))
					.toList();
	}

	private MessagePage page(Viewer viewer, int page) {
		if (viewer.operator()) {
			return this.outbox.all(page, SIZE);
		}
		UUID person = viewer.person();
		if (person == null) {
			throw new NotThere("There is no outbox here.");
		}
		return this.outbox.ofPerson(new PersonId(person), page, SIZE);
	}

	/** The zone to show times in; an operator has none of their own. */
	private ZoneId zone(Viewer viewer) {
		UUID person = viewer.person();
		return (person != null) ? this.people.find(new PersonId(person)).map(Person::zone).orElse(ZoneOffset.UTC)
				: ZoneOffset.UTC;
	}

	private static UUID identifier(String text) {
		try {
			return UUID.fromString(text);
		}
		catch (IllegalArgumentException ex) {
			throw new NotThere("There is no such mail.");
		}
	}

}
