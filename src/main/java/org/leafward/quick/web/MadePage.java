package org.leafward.quick.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.stream.Collectors;
import java.util.List;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskLines;
import org.leafward.care.TaskState;
import org.leafward.feeds.FeedAddresses;
import org.leafward.feeds.NewFeed;
import org.leafward.measure.DayWindow;
import org.leafward.pages.TaskLine;
import org.leafward.quick.MadeCalendar;
import org.leafward.quick.qr.QrCode;
import org.leafward.register.Site;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** The page that shows the address of a calendar, once. */
@Component
class MadePage {

	private static final int FORETASTE = 3;

	private static final int DAYS_AHEAD = 365;

	private final TaskCalendar tasks;

	private final FeedAddresses addresses;

	private final Clock clock;

	MadePage(TaskCalendar tasks, FeedAddresses addresses, Clock clock) {
		this.tasks = tasks;
		this.addresses = addresses;
		this.clock = clock;
	}

	String show(MadeCalendar made, Model model, HttpServletResponse response) {
		keepSecret(response);
		address(made.feed(), model);
		model.addAttribute("section", "quick");
		model.addAttribute("site", made.site());
		model.addAttribute("manage", this.addresses.absolute("/quick/manage/" + made.secret()));
		model.addAttribute("tasks", foretaste(made.site()));
		return "quick/made";
	}

	/**
	 * The page shows a secret: neither caches nor the next page's server may learn it.
	 */
	static void keepSecret(HttpServletResponse response) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader("Referrer-Policy", "no-referrer");
	}

	/** The address in the forms that programs take. */
	void address(NewFeed feed, Model model) {
		String webcal = this.addresses.webcal(feed);
		model.addAttribute("address", this.addresses.address(feed));
		model.addAttribute("webcal", webcal);
		model.addAttribute("qr", QrCode.svg(webcal, "The address of the calendar as a QR code"));
		model.addAttribute("apps", CalendarApp.ALL);
	}

	/** The next tasks, each rule once: what the calendar will be like. */
	private List<TaskLine> foretaste(Site site) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		return this.tasks.ofSite(site.id(), new DayWindow(today, today.plusDays(DAYS_AHEAD)))
			.stream()
			.filter((task) -> task.state() == TaskState.PLANNED)
			// What is to come goes before what goes on already, such as a hold-off.
			.sorted(Comparator.comparing((CareTask task) -> task.window().from().isBefore(today))
				.thenComparing((task) -> task.window().from())
				.thenComparing((task) -> task.id().value()))
			.collect(Collectors.toMap(CareTask::rule, (task) -> task, (one, other) -> one, LinkedHashMap::new))
			.values()
			.stream()
			.limit(FORETASTE)
			.map((task) -> TaskLines.line(task, null))
			.toList();
	}

}
