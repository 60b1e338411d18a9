package org.leafward.workdays.web;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.measure.BadInput;
import org.leafward.measure.CsvText;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.pages.print.Paper;
import org.leafward.pages.print.PaperSpeech;
import org.leafward.pages.print.PdfPrinter;
import org.leafward.workdays.Checklists;
import org.leafward.workdays.Group;
import org.leafward.workdays.HoursReport;
import org.leafward.workdays.Mark;
import org.leafward.workdays.OnTheDay;
import org.leafward.workdays.Workday;
import org.leafward.workdays.core.list.Checklist;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/**
 * The day itself: the list on the phone and on paper, ticks, hours, thanks, and the hours
 * of a year. Ticks come from a plain form or, where the script runs, from a queue on the
 * phone that is sent when there is a connection.
 */
@Controller
class DayPages {

	private final Ours ours;

	private final Checklists lists;

	private final OnTheDay day;

	private final HoursReport report;

	private final PdfPrinter printer;

	private final PaperSpeech speech;

	private final ITemplateEngine templates;

	private final Clock clock;

	DayPages(Ours ours, Checklists lists, OnTheDay day, HoursReport report, PdfPrinter printer, PaperSpeech speech,
			ITemplateEngine templates, Clock clock) {
		this.ours = ours;
		this.lists = lists;
		this.day = day;
		this.report = report;
		this.printer = printer;
		this.speech = speech;
		this.templates = templates;
		this.clock = clock;
	}

	@GetMapping("/workdays/{id}/checklist")
	String checklist(@PathVariable UUID id, Model model) {
		Workday workday = this.ours.workday(id);
		List<Checklist> all = this.lists.of(workday);
		long done = all.stream().mapToLong((one) -> one.done()).sum();
		int tasks = all.stream().mapToInt((one) -> one.lines().size()).sum();
		model.addAttribute("section", "groups");
		model.addAttribute("workday", workday);
		model.addAttribute("lists", all);
		model.addAttribute("done", done);
		model.addAttribute("tasks", tasks);
		model.addAttribute("begun", !workday.day().isAfter(LocalDate.ofInstant(this.clock.instant(), workday.zone())));
		// A phone keeps the list until the end of the day after the workday.
		model.addAttribute("keptUntil",
				workday.day().plusDays(2).atStartOfDay(workday.zone()).toInstant().toEpochMilli());
		return "workdays/checklist";
	}

	@GetMapping("/workdays/{id}/checklist.pdf")
	ResponseEntity<byte[]> pdf(@PathVariable UUID id, @RequestParam(required = false) @Nullable String paper,
			HttpServletRequest request) {
		Workday workday = this.ours.workday(id);
		Context model = new Context(Locale.ENGLISH);
		model.setVariable("workday", workday);
		model.setVariable("day", DayWords.of(workday.day()));
		model.setVariable("times", Fields.clock(workday.begins()) + " to " + Fields.clock(workday.ends()));
		model.setVariable("lists", this.lists.of(workday));
		model.setVariable("printed", DayWords.of(LocalDate.ofInstant(this.clock.instant(), workday.zone())));
		byte[] printed = this.printer.print(
				this.speech.say(this.templates.process("workdays/checklist-print", model), request),
				Paper.of(paper, "US-IA"), this.clock.instant(), workday.zone());
		return file("application/pdf", "leafward-workday-%s.pdf".formatted(workday.day()), printed);
	}

	/** From the plain form: one task, ticked or not. */
	@PostMapping(path = "/workdays/{id}/ticks", produces = MediaType.TEXT_HTML_VALUE)
	String tick(@PathVariable UUID id, @RequestParam(required = false) @Nullable String task,
			@RequestParam(defaultValue = "true") boolean done) {
		Workday workday = this.ours.workday(id);
		this.day.tick(workday.id(), List.of(new Mark(UUID.randomUUID(), workday.id(),
				new TaskId(Fields.id("task", task)), this.ours.somebody(), done, this.clock.instant())));
		return "redirect:/workdays/%s/checklist#task-%s".formatted(workday.id(), task);
	}

	/** From the queue of a phone: each tick as key, task, yes or no, and when. */
	@PostMapping(path = "/workdays/{id}/ticks", params = "mark", produces = MediaType.APPLICATION_JSON_VALUE)
	@ResponseBody
	Map<String, Boolean> ticks(@PathVariable UUID id, @RequestParam List<String> mark) {
		Workday workday = this.ours.workday(id);
		PersonId me = this.ours.somebody();
		List<Mark> marks = new ArrayList<>();
		for (String one : mark) {
			marks.add(mark(workday, me, one));
		}
		Map<String, Boolean> states = new LinkedHashMap<>();
		this.day.tick(workday.id(), marks).forEach((task, done) -> states.put(task.toString(), done));
		return states;
	}

	private static Mark mark(Workday workday, PersonId me, String text) {
		String[] parts = text.split("\\|", -1);
		try {
			if (parts.length == 4) {
				return new Mark(UUID.fromString(parts[0]), workday.id(), new TaskId(UUID.fromString(parts[1])), me,
						parts[2].equals("yes"), Instant.parse(parts[3]));
			}
		}
		catch (IllegalArgumentException | DateTimeParseException ex) {
			// Said below.
		}
		throw new BadInput("that is no tick", "mark", "load the list anew");
	}

	@PostMapping("/workdays/{id}/hours")
	String hours(@PathVariable UUID id, @RequestParam Map<String, String> form, RedirectAttributes flash) {
		Workday workday = this.ours.ledWorkday(id);
		Group group = this.ours.of(workday);
		Map<PersonId, Integer> minutes = new LinkedHashMap<>();
		group.members().forEach((member) -> {
			String written = form.getOrDefault("hours-" + member.person(), "").strip();
			if (!written.isEmpty()) {
				minutes.put(member.person(), Hours.minutes("hours-" + member.person(), written));
			}
		});
		this.day.hours(workday.id(), minutes);
		flash.addFlashAttribute("remarks", List.of("The hours are noted."));
		return "redirect:/workdays/" + workday.id();
	}

	@PostMapping("/workdays/{id}/thanks")
	String thanks(@PathVariable UUID id, RedirectAttributes flash) {
		Workday workday = this.ours.ledWorkday(id);
		this.day.thank(workday.id());
		flash.addFlashAttribute("remarks", List.of("Thanks are on their way to everybody with hours."));
		return "redirect:/workdays/" + workday.id();
	}

	/** In the table for other programs, which is English as its head is. */
	private static final String GONE = "people whose account is deleted";

	/** A member's year; without a name for those whose account is deleted. */
	record Year(String name, int days, String hours) {
	}

	@GetMapping("/groups/{id}/hours")
	String year(@PathVariable UUID id, @RequestParam(required = false) @Nullable String year, Model model) {
		Group group = this.ours.led(id);
		int asked = asked(group, year);
		List<HoursReport.Line> lines = this.report.of(group.id(), asked);
		model.addAttribute("section", "groups");
		model.addAttribute("group", group);
		model.addAttribute("year", asked);
		model.addAttribute("lines",
				lines.stream().map((one) -> new Year(one.name(), one.days(), Hours.text(one.minutes()))).toList());
		model.addAttribute("sum", Hours.text(lines.stream().mapToInt(HoursReport.Line::minutes).sum()));
		return "workdays/hours";
	}

	private int asked(Group group, @Nullable String year) {
		int now = LocalDate.ofInstant(this.clock.instant(), group.zone()).getYear();
		if (year == null || year.isBlank()) {
			return now;
		}
		return Hours.year(Given.whole("year", year), now);
	}

	@GetMapping("/groups/{id}/hours.csv")
	ResponseEntity<byte[]> csv(@PathVariable UUID id, @RequestParam(required = false) @Nullable String year) {
		Group group = this.ours.led(id);
		int asked = asked(group, year);
		List<List<String>> rows = new ArrayList<>(List.of(List.of("year", "member", "workdays", "hours")));
		this.report.of(group.id(), asked)
			.forEach((one) -> rows
				.add(List.of(String.valueOf(asked), CsvText.safe(one.name().isEmpty() ? GONE : one.name()),
						String.valueOf(one.days()), Hours.text(one.minutes()))));
		return file("text/csv;charset=UTF-8;header=present", "leafward-hours-%d.csv".formatted(asked),
				CsvText.write(rows).getBytes(StandardCharsets.UTF_8));
	}

	private static ResponseEntity<byte[]> file(String type, String name, byte[] content) {
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType(type))
			.header(HttpHeaders.CONTENT_DISPOSITION, ContentDisposition.attachment().filename(name).build().toString())
			.body(content);
	}

}
