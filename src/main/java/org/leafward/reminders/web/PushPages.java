package org.leafward.reminders.web;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.reminders.PushSubscription;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.push.PushChannel;
import org.leafward.reminders.channel.push.PushSubscriptions;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/**
 * Where a person has messages sent to the browser they are looking with, and sees and
 * ends what was added. A script asks the browser and fills in the form; the form is sent
 * like any other.
 */
@Controller
class PushPages {

	private final PushSubscriptions subscriptions;

	private final PushChannel channel;

	private final People people;

	private final Viewers viewers;

	PushPages(PushSubscriptions subscriptions, PushChannel channel, People people, Viewers viewers) {
		this.subscriptions = subscriptions;
		this.channel = channel;
		this.people = people;
		this.viewers = viewers;
	}

	/**
	 * The form. All but the label is filled in by script.
	 *
	 * @param endpoint the push service's address
	 * @param p256dh the browser's public key
	 * @param auth the browser's secret
	 * @param label what its owner calls it
	 */
	record Form(@Nullable String endpoint, @Nullable String p256dh, @Nullable String auth, @Nullable String label) {

		static final Form EMPTY = new Form(null, null, null, null);

	}

	/**
	 * A browser in the list.
	 *
	 * @param id identifier
	 * @param label what its owner calls it
	 * @param more when it was added and last got something
	 * @param print by which a script tells whether it is the one it runs in, without the
	 * page telling the endpoint
	 */
	record Row(UUID id, String label, String more, String print) {

		static Row of(PushSubscription one, ZoneId zone) {
			String last = (one.lastOkAt() != null) ? "last message " + day(one.lastOkAt(), zone) : "no message yet";
			String trouble = (one.failures() > 0) ? ", could not be reached the last time" : "";
			return new Row(one.id(), one.label(), "added %s, %s%s".formatted(day(one.createdAt(), zone), last, trouble),
					hash(one.endpoint()));
		}

	}

	@GetMapping("/reminders/push")
	String page(Model model) {
		return show(Form.EMPTY, Map.of(), null, model);
	}

	@PostMapping("/reminders/push")
	String add(@ModelAttribute("form") Form form, Model model, HttpServletResponse response) {
		try {
			this.subscriptions.add(person(), form.endpoint(), form.p256dh(), form.auth(), form.label());
			return "redirect:/reminders/push";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(form, ex.byField(), null, model);
		}
	}

	@PostMapping("/reminders/push/{id}/stop")
	String stop(@PathVariable UUID id) {
		this.subscriptions.remove(person(), id);
		return "redirect:/reminders/push";
	}

	@PostMapping("/reminders/push/trial")
	String trial(Model model) {
		return show(Form.EMPTY, Map.of(), words(this.channel.trial(person())), model);
	}

	private String show(Form form, Map<String, String> errors, @Nullable String tried, Model model) {
		PersonId person = person();
		ZoneId zone = this.people.find(person).map(Person::zone).orElse(ZoneOffset.UTC);
		model.addAttribute("section", "reminders");
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("tried", tried);
		model.addAttribute("key", this.channel.publicKey());
		model.addAttribute("most", PushSubscription.MOST);
		model.addAttribute("rows", this.subscriptions.of(person).stream().map((one) -> Row.of(one, zone)).toList());
		return "reminders/push";
	}

	/** What came of a trial, for the person. */
	static String words(Delivery delivery) {
		return switch (delivery.outcome()) {
			case TAKEN, KEPT, UNCERTAIN ->
				"A trial message is on its way. When it does not come within a minute, look whether "
						+ "the device may show messages of this browser.";
			case LATER, UNREACHABLE ->
				"The trial message could not be handed on: %s. Try again later.".formatted(delivery.reason());
			case REFUSED, OUR_FAULT ->
				"The trial message could not be handed on: %s. Remove the browser and add it again."
					.formatted(delivery.reason());
		};
	}

	private static String hash(String endpoint) {
		try {
			return HexFormat.of()
				.formatHex(MessageDigest.getInstance("SHA-256").digest(endpoint.getBytes(StandardCharsets.UTF_8)));
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java has SHA-256", ex);
		}
	}

	private static String day(Instant instant, ZoneId zone) {
		return DayWords.of(LocalDate.ofInstant(instant, zone));
	}

	private PersonId person() {
		UUID person = this.viewers.current().person();
		if (person == null) {
			throw new NotThere("Messages are for people; sign in as one of them.");
		}
		return new PersonId(person);
	}

}
