package org.leafward.quick.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.leafward.accounts.Confirmations;
import org.leafward.feeds.FeedInfo;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.quick.QuickCalendar;
import org.leafward.quick.QuickCalendars;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * What whoever has the secret of a quick calendar may do with it: add an e-mail address,
 * take another address, delete it. Once an e-mail address is confirmed, only signing in
 * helps.
 */
@Controller
class ManagePages {

	private final QuickCalendars calendars;

	private final Register register;

	private final Confirmations confirmations;

	private final MadePage made;

	ManagePages(QuickCalendars calendars, Register register, Confirmations confirmations, MadePage made) {
		this.calendars = calendars;
		this.register = register;
		this.confirmations = confirmations;
		this.made = made;
	}

	@GetMapping("/quick/manage/{secret}")
	String page(@PathVariable String secret, Model model, HttpServletResponse response) {
		return show(this.calendars.require(secret), secret, "", Map.of(), model, response);
	}

	@PostMapping("/quick/manage/{secret}/email")
	String email(@PathVariable String secret, @RequestParam(defaultValue = "") String email, Model model,
			HttpServletResponse response) {
		QuickCalendar calendar = mayChange(secret);
		try {
			Confirmations.Outcome outcome = this.confirmations.ask(calendar.person(), email);
			model.addAttribute("remark",
					(outcome == Confirmations.Outcome.SENT)
							? "A mail is on its way. Follow the link in it, and the calendar is yours to sign in to."
							: "This server has no mail server, so no address can be added here.");
			return show(calendar, secret, "", Map.of(), model, response);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			String kept = email.substring(0, Math.min(email.length(), 254));
			return show(calendar, secret, kept, ex.byField(), model, response);
		}
	}

	@PostMapping("/quick/manage/{secret}/address")
	String address(@PathVariable String secret, Model model, HttpServletResponse response) {
		QuickCalendar calendar = mayChange(secret);
		this.made.address(this.calendars.anotherAddress(calendar), model);
		return show(this.calendars.require(secret), secret, "", Map.of(), model, response);
	}

	@PostMapping("/quick/manage/{secret}/delete")
	String delete(@PathVariable String secret, Model model, HttpServletResponse response) {
		this.calendars.delete(mayChange(secret));
		MadePage.keepSecret(response);
		model.addAttribute("section", "quick");
		return "quick/deleted";
	}

	private QuickCalendar mayChange(String secret) {
		QuickCalendar calendar = this.calendars.require(secret);
		if (this.calendars.claimed(calendar)) {
			throw new NotThere("This calendar has an owner with an e-mail address. Sign in to change it.");
		}
		return calendar;
	}

	private String show(QuickCalendar calendar, String secret, String email, Map<String, String> errors, Model model,
			HttpServletResponse response) {
		MadePage.keepSecret(response);
		model.addAttribute("section", "quick");
		model.addAttribute("secret", secret);
		model.addAttribute("errors", errors);
		model.addAttribute("email", email);
		model.addAttribute("claimed", this.calendars.claimed(calendar));
		Site site = this.register.require(calendar.site());
		model.addAttribute("site", site);
		model.addAttribute("plants", this.register.plantingsOf(calendar.site()).stream().map(Planting::label).toList());
		model.addAttribute("feed",
				this.calendars.latest(calendar).map((feed) -> words(feed, site.zone())).orElse("There is no address."));
		return "quick/manage";
	}

	private static String words(FeedInfo feed, ZoneId zone) {
		if (feed.revokedAt() != null) {
			return "Its address is dead. You can make a new one.";
		}
		Instant fetched = feed.lastFetchedAt();
		return "Its address was made on %s and %s. Unless a program fetches it, it ends on %s.".formatted(
				day(feed.createdAt(), zone),
				(fetched != null) ? "last fetched on " + day(fetched, zone) : "was not fetched yet",
				DayWords.of(feed.ends()));
	}

	private static String day(Instant instant, ZoneId zone) {
		return DayWords.of(LocalDate.ofInstant(instant, zone));
	}

}
