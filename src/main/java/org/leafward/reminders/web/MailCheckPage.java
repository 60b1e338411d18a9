package org.leafward.reminders.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leafward.measure.Given;
import org.leafward.reminders.Suppressed;
import org.leafward.reminders.Suppressions;
import org.leafward.reminders.channel.mail.MailDoctor;
import org.leafward.reminders.channel.mail.MailFinding;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Whether mails arrive, and the addresses that get none; for the operator. */
@Controller
class MailCheckPage {

	private static final int SIZE = 50;

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH)
		.withZone(ZoneOffset.UTC);

	private final MailDoctor doctor;

	private final Suppressions suppressions;

	MailCheckPage(MailDoctor doctor, Suppressions suppressions) {
		this.doctor = doctor;
		this.suppressions = suppressions;
	}

	/**
	 * An address as the page shows it.
	 *
	 * @param address the address
	 * @param reason what was said of it
	 * @param since the day on which it was said
	 */
	record Silent(String address, String reason, String since) {

		static Silent of(Suppressed one) {
			return new Silent(one.address(), one.reason(), DAY.format(one.since()));
		}

	}

	@GetMapping("/mail-check")
	String settings(@RequestParam(defaultValue = "0") int page, Model model) {
		return show(this.doctor.settings(), false, page, model);
	}

	/**
	 * Asks the mail server and name servers, so it is no page that is opened by the way.
	 */
	@PostMapping("/mail-check")
	String outside(Model model) {
		List<MailFinding> all = new ArrayList<>(this.doctor.settings());
		all.addAll(this.doctor.outside());
		return show(all, true, 0, model);
	}

	@PostMapping("/mail-check/lifted")
	String lift(@RequestParam(defaultValue = "") String address) {
		this.suppressions.lift(Given.text("address", address));
		return "redirect:/mail-check";
	}

	private String show(List<MailFinding> findings, boolean outside, int page, Model model) {
		List<Suppressed> silent = this.suppressions.list(page, SIZE);
		model.addAttribute("section", "accounts");
		model.addAttribute("findings", findings);
		model.addAttribute("outside", outside);
		model.addAttribute("silent", silent.stream().map(Silent::of).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", silent.size() == SIZE);
		return "reminders/mail-check";
	}

}
