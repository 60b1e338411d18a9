package org.leafward.advisories.web;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.Deliveries.Delivered;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.desk.AfterReport;
import org.leafward.advisories.desk.Desk;
import org.leafward.advisories.shelf.Chain;
import org.leafward.advisories.shelf.Past;
import org.leafward.advisories.share.DayAndTime;
import org.leafward.language.Language;
import org.leafward.measure.BadInput;
import org.leafward.measure.CsvText;
import org.leafward.measure.Given;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** What became of advisories, one by one and over a year. */
@Controller
class AfterPages {

	/** More than a region sends in a year; the table says so when there are more. */
	private static final int MOST = 500;

	private static final int FIRST_YEAR = 2020;

	private final Desk desk;

	private final AfterReport report;

	private final Past past;

	private final Regions regions;

	private final Clock clock;

	AfterPages(Desk desk, AfterReport report, Past past, Regions regions, Clock clock) {
		this.desk = desk;
		this.report = report;
		this.past = past;
		this.regions = regions;
		this.clock = clock;
	}

	@GetMapping("/advisories/compose/after/{id}")
	String after(@PathVariable UUID id, Model model) {
		AfterReport.After after = this.report.of(this.desk.sent(new AdvisoryId(id)));
		model.addAttribute("section", "advisories");
		model.addAttribute("after", after);
		model.addAttribute("advisory", AdvisoryView.of(after.advisory(), this.regions, Language.ENGLISH));
		model.addAttribute("year", after.advisory().first().atZone(after.advisory().zone()).getYear());
		return "advisories/after";
	}

	/** A line of the log of a year. */
	record LogLine(String href, String sent, String event, String headline, String counties, int messages, String state,
			@Nullable Long people, @Nullable Long mails, @Nullable Long waiting, @Nullable Long failed,
			@Nullable Long questions) {
	}

	@GetMapping("/advisories/compose/season/{year}")
	String season(@PathVariable String year, Model model) {
		int asked = year(year);
		List<LogLine> lines = chains(asked).stream().map(this::line).toList();
		model.addAttribute("section", "advisories");
		model.addAttribute("year", asked);
		model.addAttribute("lines", lines);
		model.addAttribute("full", lines.size() >= MOST);
		model.addAttribute("people",
				lines.stream().mapToLong((one) -> (one.people() != null) ? one.people() : 0).sum());
		int now = thisYear();
		model.addAttribute("before", (asked > FIRST_YEAR) ? asked - 1 : null);
		model.addAttribute("next", (asked < now) ? asked + 1 : null);
		return "advisories/season";
	}

	private int thisYear() {
		return this.clock.instant().atZone(ZoneOffset.UTC).getYear();
	}

	private int year(String given) {
		int year = Given.whole("year", given);
		if (year < FIRST_YEAR || year > thisYear() + 1) {
			throw new BadInput("the year %d is outside %d to %d".formatted(year, FIRST_YEAR, thisYear() + 1), "year",
					"choose another year");
		}
		return year;
	}

	/** By the clock of the first county, so that New Year's Eve belongs to its year. */
	private List<Chain> chains(int year) {
		List<County> counties = this.desk.counties();
		if (counties.isEmpty()) {
			return List.of();
		}
		ZoneId zone = counties.get(0).zone();
		Instant from = LocalDate.of(year, 1, 1).atStartOfDay(zone).toInstant();
		Instant to = LocalDate.of(year + 1, 1, 1).atStartOfDay(zone).toInstant();
		Set<String> codes = counties.stream().map(County::code).collect(Collectors.toCollection(TreeSet::new));
		List<Chain> all = new ArrayList<>(this.past.sent(codes, from, to, MOST));
		all.removeIf((chain) -> !codes.containsAll(chain.links().counties()));
		return all;
	}

	private LogLine line(Chain chain) {
		AfterReport.After after = this.report.of(chain, false);
		Delivered told = after.allTold();
		return new LogLine("/advisories/compose/after/" + chain.advisory(),
				DayAndTime.of(after.advisory().first(), after.advisory().zone()), after.advisory().event().english(),
				after.advisory().english().headline(), counties(after), chain.messages().size(),
				after.advisory().state().words(), (after.reach() != null) ? after.reach().people() : null,
				(told != null) ? told.sent() : null, (told != null) ? told.waiting() : null,
				(told != null) ? told.failed() : null, after.questions());
	}

	private String counties(AfterReport.After after) {
		return this.regions.counties()
			.stream()
			.filter((one) -> after.advisory().area().counties().contains(one.code()))
			.map(County::name)
			.collect(Collectors.joining(", "));
	}

	@GetMapping("/advisories/compose/season/{year}.csv")
	ResponseEntity<byte[]> csv(@PathVariable String year) {
		int asked = year(year);
		List<List<String>> rows = new ArrayList<>();
		rows.add(List.of("advisory", "first_sent", "last_sent", "messages", "state", "condition", "event", "headline",
				"counties", "severity", "urgency", "certainty", "onset", "expires", "people", "sites", "plantings",
				"messages_sent", "messages_waiting", "messages_failed", "tasks_done", "tasks_left_out", "tasks_open",
				"questions", "reasons"));
		chains(asked).forEach((chain) -> rows.add(row(chain)));
		byte[] text = CsvText.write(rows.stream().map((row) -> row.stream().map(CsvText::safe).toList()).toList())
			.getBytes(StandardCharsets.UTF_8);
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType("text/csv;charset=UTF-8;header=present"))
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename("advisories-%d.csv".formatted(asked)).build().toString())
			.body(text);
	}

	private List<String> row(Chain chain) {
		AfterReport.After after = this.report.of(chain);
		var one = after.advisory();
		var reach = after.reach();
		var tasks = after.tasks();
		Delivered told = after.allTold();
		return List.of(one.id().toString(), one.first().toString(), one.sent().toString(),
				Integer.toString(chain.messages().size()), one.state().words(), text(one.condition()),
				one.event().english(), one.english().headline(), counties(after), one.facts().severity().cap(),
				one.facts().urgency().cap(), one.facts().certainty().cap(), one.onset().toString(),
				one.expires().toString(), (reach != null) ? Long.toString(reach.people()) : "",
				(reach != null) ? Long.toString(reach.sites()) : "",
				(reach != null) ? Long.toString(reach.plantings()) : "", text((told != null) ? told.sent() : null),
				text((told != null) ? told.waiting() : null), text((told != null) ? told.failed() : null),
				(tasks != null) ? Long.toString(tasks.done()) : "",
				(tasks != null) ? Long.toString(tasks.leftOut()) : "",
				(tasks != null) ? Long.toString(tasks.open()) : "", text(after.questions()),
				chain.messages()
					.stream()
					.map(Message::reason)
					.filter((reason) -> reason != null && !reason.isBlank())
					.collect(Collectors.joining("; ")));
	}

	private static String text(@Nullable Object value) {
		return (value != null) ? value.toString() : "";
	}

}
