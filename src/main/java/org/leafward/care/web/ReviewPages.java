package org.leafward.care.web;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.SiteYears;
import org.leafward.care.TaskState;
import org.leafward.care.core.review.ReviewTable;
import org.leafward.care.core.review.Reviewed;
import org.leafward.care.core.review.YearReview;
import org.leafward.climate.WeatherYear;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.pages.DateLine;
import org.leafward.pages.YearStrip;
import org.leafward.pages.print.Paper;
import org.leafward.pages.print.PaperSpeech;
import org.leafward.pages.print.PdfPrinter;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/**
 * The year of a site, looked back on: as a page, on paper, and as a table of values. It
 * tells what people logged, so it is for those who look after the site.
 */
@Controller
class ReviewPages {

	/** Rows of the strip; what is alike shares one. */
	private static final int MOST_STRIP_ROWS = 40;

	private final SiteYears years;

	private final Register register;

	private final Mine mine;

	private final PdfPrinter printer;

	private final PaperSpeech speech;

	private final ITemplateEngine templates;

	private final Clock clock;

	ReviewPages(SiteYears years, Register register, Mine mine, PdfPrinter printer, PaperSpeech speech,
			ITemplateEngine templates, Clock clock) {
		this.years = years;
		this.register = register;
		this.mine = mine;
		this.printer = printer;
		this.speech = speech;
		this.templates = templates;
		this.clock = clock;
	}

	@GetMapping("/sites/{id}/review")
	String sensible(@PathVariable UUID id) {
		Site site = this.mine.site(id);
		return "redirect:/sites/%s/review/%d".formatted(site.id(), this.years.sensible(site));
	}

	@GetMapping("/sites/{id}/review/{year}")
	String show(@PathVariable UUID id, @PathVariable String year, Model model) {
		Site site = this.mine.site(id);
		int asked = year(site, year);
		LocalDate today = this.years.today(site);
		YearReview review = this.years.review(site, asked);
		WeatherYear weather = this.years.weather(site, asked).orElse(null);
		YearStrip strip = strip(site, review, weather, today);
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("review", ReviewWords.of(review, weather, today));
		model.addAttribute("before", (asked > SiteYears.FIRST) ? asked - 1 : null);
		model.addAttribute("after", (asked <= today.getYear()) ? asked + 1 : null);
		model.addAttribute("papers", Paper.values());
		model.addAttribute("strip", strip.rows().isEmpty() ? null : strip);
		model.addAttribute("stripRows", SiteStrip.inWords(strip));
		return "care/review";
	}

	private int year(Site site, String year) {
		return this.years.check(site, Given.whole("year", year));
	}

	private YearStrip strip(Site site, YearReview review, @Nullable WeatherYear weather, LocalDate today) {
		DayWindow year = new DayWindow(LocalDate.of(review.year(), 1, 1), LocalDate.of(review.year(), 12, 31));
		List<CareTask> drawn = review.tasks()
			.stream()
			.map(Reviewed::task)
			.filter((task) -> task.state() == TaskState.PLANNED || task.state() == TaskState.DONE)
			.toList();
		YearStrip strip = SiteStrip.lookedBack(site, year, year.contains(today) ? today : null,
				this.register.plantingsOf(site.id()), drawn, freezes(year, weather));
		return (strip.rows().size() <= MOST_STRIP_ROWS) ? strip : new YearStrip(strip.id(), strip.title(), strip.from(),
				strip.to(), strip.today(), strip.rows().subList(0, MOST_STRIP_ROWS), strip.markers());
	}

	/** The freezes that came, not those that are usual. */
	private static List<DateLine> freezes(DayWindow year, @Nullable WeatherYear weather) {
		List<DateLine> lines = new ArrayList<>();
		LocalDate spring = (weather != null) ? weather.spring().date() : null;
		LocalDate fall = (weather != null) ? weather.fall().date() : null;
		if (spring != null && year.contains(spring)) {
			lines.add(new DateLine("last freeze", spring));
		}
		if (fall != null && year.contains(fall)) {
			lines.add(new DateLine("first freeze", fall));
		}
		return lines;
	}

	@GetMapping("/sites/{id}/review/{year}.pdf")
	ResponseEntity<byte[]> pdf(@PathVariable UUID id, @PathVariable String year,
			@RequestParam(required = false) @Nullable String paper, HttpServletRequest request) {
		Site site = this.mine.site(id);
		int asked = year(site, year);
		Paper size = Paper.of(paper, site.region());
		LocalDate today = this.years.today(site);
		Context model = new Context(Locale.ENGLISH);
		model.setVariable("site", site);
		model.setVariable("review",
				ReviewWords.of(this.years.review(site, asked), this.years.weather(site, asked).orElse(null), today));
		model.setVariable("printed", DayWords.of(today));
		byte[] printed = this.printer.print(
				this.speech.say(this.templates.process("care/review-print", model), request), size,
				this.clock.instant(), site.zone());
		return file("application/pdf", "leafward-review-%d.pdf".formatted(asked), printed);
	}

	@GetMapping("/sites/{id}/review/{year}.csv")
	ResponseEntity<byte[]> csv(@PathVariable UUID id, @PathVariable String year) {
		Site site = this.mine.site(id);
		int asked = year(site, year);
		return file("text/csv;charset=UTF-8;header=present", "leafward-review-%d.csv".formatted(asked),
				ReviewTable.write(this.years.review(site, asked)).getBytes(StandardCharsets.UTF_8));
	}

	private static ResponseEntity<byte[]> file(String type, String name, byte[] content) {
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType(type))
			.header(HttpHeaders.CONTENT_DISPOSITION, ContentDisposition.attachment().filename(name).build().toString())
			.body(content);
	}

}
