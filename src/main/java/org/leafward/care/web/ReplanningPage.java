package org.leafward.care.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.leafward.care.ReplanFailure;
import org.leafward.care.ReplanProgress;
import org.leafward.care.Replanning;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/** How far the tasks of all sites have been derived; for the operator. */
@Controller
class ReplanningPage {

	private static final int MOST_FAILURES = 50;

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm 'UTC'", Locale.ENGLISH)
		.withZone(ZoneOffset.UTC);

	private final Replanning replanning;

	private final Register register;

	private final Clock clock;

	ReplanningPage(Replanning replanning, Register register, Clock clock) {
		this.replanning = replanning;
		this.register = register;
		this.clock = clock;
	}

	/**
	 * A site that failed.
	 *
	 * @param site identifier
	 * @param name what readers call it
	 * @param reason what went wrong
	 * @param next when it is tried again, and how often it failed
	 */
	record Failed(UUID site, String name, String reason, String next) {
	}

	@GetMapping("/replanning")
	String progress(Model model) {
		Instant now = this.clock.instant();
		ReplanProgress progress = this.replanning.progress(now.minus(1, ChronoUnit.HOURS));
		List<ReplanFailure> failures = this.replanning.failures(MOST_FAILURES);
		Map<SiteId, String> names = this.register.find(failures.stream().map(ReplanFailure::site).toList())
			.stream()
			.collect(Collectors.toMap(Site::id, Site::name));
		Instant oldest = progress.oldest();
		model.addAttribute("section", "rules");
		model.addAttribute("waiting", progress.waiting());
		model.addAttribute("oldest", (oldest != null) ? "%s, %d minutes ago".formatted(TIME.format(oldest),
				Math.max(0, Duration.between(oldest, now).toMinutes())) : null);
		model.addAttribute("derived", progress.derived());
		model.addAttribute("failing", progress.failing());
		model.addAttribute("failures", failures.stream()
			.map((one) -> new Failed(one.site().value(), names.getOrDefault(one.site(), "a site that is gone"),
					one.reason(), "%s, after %d failures".formatted(TIME.format(one.nextTry()), one.attempts())))
			.toList());
		model.addAttribute("now", TIME.format(now));
		return "care/replanning";
	}

	@PostMapping("/replanning")
	String all() {
		this.replanning.askAll();
		return "redirect:/replanning";
	}

}
