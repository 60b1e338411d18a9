package org.leafward.reminders.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.reminders.channel.webhook.WebhookView;
import org.leafward.reminders.channel.webhook.Webhooks;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Where people say which server of theirs is told what is due. */
@Controller
class WebhookPage {

	private static final String PAGE = "/reminders/webhook";

	private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

	private final Webhooks webhooks;

	private final Viewers viewers;

	private final People people;

	WebhookPage(Webhooks webhooks, Viewers viewers, People people) {
		this.webhooks = webhooks;
		this.viewers = viewers;
		this.people = people;
	}

	/**
	 * A webhook in words.
	 *
	 * @param on whether messages go to it
	 * @param because why they don't
	 * @param made when it was made
	 * @param last when something was last sent and what came of it; null before that
	 * @param lastOk when something was last taken; null before that
	 * @param former until when the former secret signs too; null when there is none
	 */
	record Lines(boolean on, @Nullable String because, String made, @Nullable String last, @Nullable String lastOk,
			@Nullable String former) {
	}

	@GetMapping(PAGE)
	String look(Model model) {
		PersonId person = person();
		return show(person, address(person), Map.of(), null, model);
	}

	@PostMapping(PAGE)
	String set(@RequestParam(required = false) @Nullable String address, Model model, HttpServletResponse response) {
		PersonId person = person();
		try {
			Optional<String> secret = this.webhooks.set(person, address);
			return secret.isEmpty() ? "redirect:" + PAGE : told(person, secret.get(), model, response);
		}
		catch (BadInput ex) {
			return refused(person, address, ex, model, response);
		}
	}

	@PostMapping(PAGE + "/secret")
	String renew(Model model, HttpServletResponse response) {
		PersonId person = person();
		return told(person, this.webhooks.renewSecret(person), model, response);
	}

	@PostMapping(PAGE + "/trial")
	String trial(Model model, HttpServletResponse response) {
		PersonId person = person();
		try {
			this.webhooks.trial(person);
			return "redirect:" + PAGE;
		}
		catch (BadInput ex) {
			return refused(person, address(person), ex, model, response);
		}
	}

	@PostMapping(PAGE + "/remove")
	String remove() {
		this.webhooks.remove(person());
		return "redirect:" + PAGE;
	}

	private String told(PersonId person, String secret, Model model, HttpServletResponse response) {
		// The page shows a secret: neither caches nor the next page's server may learn
		// it.
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader("Referrer-Policy", "no-referrer");
		return show(person, address(person), Map.of(), secret, model);
	}

	private String refused(PersonId person, @Nullable String address, BadInput trouble, Model model,
			HttpServletResponse response) {
		response.setStatus(HttpStatus.BAD_REQUEST.value());
		return show(person, address, trouble.byField(), null, model);
	}

	private String show(PersonId person, @Nullable String address, Map<String, String> errors, @Nullable String secret,
			Model model) {
		ZoneId zone = this.people.find(person).map(Person::zone).orElse(ZoneOffset.UTC);
		model.addAttribute("section", "reminders");
		model.addAttribute("address", address);
		model.addAttribute("errors", errors);
		model.addAttribute("fresh", secret);
		model.addAttribute("webhook", this.webhooks.find(person).map((one) -> lines(one, zone)).orElse(null));
		return "reminders/webhook";
	}

	private static Lines lines(WebhookView webhook, ZoneId zone) {
		Instant tried = webhook.lastTriedAt();
		return new Lines(webhook.on(), webhook.disabledBecause(), words(webhook.createdAt(), zone),
				(tried != null) ? words(tried, zone) + ": " + webhook.lastOutcome() : null,
				wordsOrNull(webhook.lastOkAt(), zone), wordsOrNull(webhook.formerUntil(), zone));
	}

	private static @Nullable String wordsOrNull(@Nullable Instant instant, ZoneId zone) {
		return (instant != null) ? words(instant, zone) : null;
	}

	private static String words(Instant instant, ZoneId zone) {
		return WORDS.format(instant.atZone(zone));
	}

	private @Nullable String address(PersonId person) {
		return this.webhooks.find(person).map((one) -> one.address().toString()).orElse(null);
	}

	private PersonId person() {
		UUID person = this.viewers.current().person();
		if (person == null) {
			throw new NotThere("The operator token acts for nobody; sign in as a person to have a webhook.");
		}
		return new PersonId(person);
	}

}
