package org.leafward.reminders.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.leafward.accounts.Person;
import org.leafward.measure.BadInput;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Wishes;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** How to be told, and what comes next, as JSON. */
@RestController
@Tag(name = "Reminders", description = "How you want to be told, and what comes next")
@RequestMapping("/api/v1/reminders")
class RemindersApi {

	private final Me me;

	private final HowToTell howToTell;

	private final Coming coming;

	RemindersApi(Me me, HowToTell howToTell, Coming coming) {
		this.me = me;
		this.howToTell = howToTell;
		this.coming = coming;
	}

	@Operation(summary = "How you want to be told; what you never chose is told as it is usual")
	@GetMapping
	WishesView wishes() {
		return view(this.me.person());
	}

	@Operation(summary = "Choose how to be told; what is left out is as usual, but series that were left stay left")
	@PutMapping
	WishesView change(@RequestBody WishesBody body) {
		Person person = this.me.person();
		Wishes wishes = body.wishes(this.me.codes(), this.me.today(person.zone()));
		if (body.stopped() != null) {
			this.howToTell.saveAll(person.id(), wishes);
		}
		else {
			this.howToTell.save(person.id(), wishes);
		}
		return view(person);
	}

	/**
	 * What is still to be sent.
	 * @param limit how many at most, 1 to 200
	 * @throws BadInput when the limit is out of range
	 */
	@Operation(summary = "What you will be told next, soonest first; reminders are made two weeks ahead")
	@GetMapping("/upcoming")
	List<Coming.Upcoming> upcoming(@RequestParam(defaultValue = "50") int limit) {
		return this.coming.of(this.me.person().id(), limit);
	}

	private WishesView view(Person person) {
		return WishesView.of(this.howToTell.of(person.id()), this.me.codes(), this.me.today(person.zone()));
	}

}
