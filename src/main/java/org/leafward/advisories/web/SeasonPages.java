package org.leafward.advisories.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.dates.CountyDate;
import org.leafward.advisories.dates.CountyDates;
import org.leafward.advisories.dates.SeasonDate;
import org.leafward.advisories.desk.AdvisorySettings;
import org.leafward.advisories.picture.Drawn;
import org.leafward.advisories.picture.Poster;
import org.leafward.advisories.share.DayAndTime;
import org.leafward.advisories.share.ShareKit;
import org.leafward.language.Language;
import org.leafward.measure.DayWords;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.pages.print.Paper;
import org.leafward.pages.print.PdfPrinter;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** Dates of the season by county: to read, to pass on and to print. */
@Controller
class SeasonPages {

	private final CountyDates dates;

	private final ShareKit kit;

	private final Regions regions;

	private final Viewers viewers;

	private final AdvisorySettings settings;

	private final PdfPrinter printer;

	private final ITemplateEngine templates;

	private final Clock clock;

	SeasonPages(CountyDates dates, ShareKit kit, Regions regions, Viewers viewers, AdvisorySettings settings,
			PdfPrinter printer, ITemplateEngine templates, Clock clock) {
		this.dates = dates;
		this.kit = kit;
		this.regions = regions;
		this.viewers = viewers;
		this.settings = settings;
		this.printer = printer;
		this.templates = templates;
		this.clock = clock;
	}

	/** A row of a table. */
	record DateRow(String name, @Nullable String href, @Nullable String early, @Nullable String date,
			@Nullable String late, @Nullable String missing, @Nullable String use) {
	}

	/** A marker in a list. */
	record MarkerLine(String title, String href) {
	}

	@GetMapping("/season-dates")
	String all(Model model, HttpServletResponse response) {
		frame(model, response);
		model.addAttribute("counties", this.regions.counties());
		model.addAttribute("markers",
				Arrays.stream(SeasonDate.values())
					.map((one) -> new MarkerLine(one.title().english(), "/season-dates/" + one.code()))
					.toList());
		return "advisories/dates";
	}

	private void frame(Model model, HttpServletResponse response) {
		model.addAttribute("section", "season-dates");
		Caching.page(this.viewers.current(), response);
	}

	@GetMapping("/season-dates/{marker}")
	String marker(@PathVariable String marker, Model model, HttpServletResponse response) {
		SeasonDate found = SeasonDate.of(marker)
			.orElseThrow(() -> new NotThere("There is no season marker '%s' here.".formatted(marker)));
		frame(model, response);
		model.addAttribute("marker", found.title().english());
		model.addAttribute("use", found.use().english());
		model.addAttribute("rows",
				this.dates.of(found)
					.stream()
					.map((one) -> row(one, one.county().name(), "/season-dates/counties/" + one.county().code()))
					.toList());
		model.addAttribute("sources", this.dates.sources(this.regions.counties()));
		model.addAttribute("texts", this.kit.texts(found));
		model.addAttribute("alt",
				this.kit.picture(found, Poster.Form.WIDE, Language.ENGLISH).map(Drawn::alt).orElse(null));
		model.addAttribute("altSpanish",
				this.kit.picture(found, Poster.Form.WIDE, Language.SPANISH).map(Drawn::alt).orElse(null));
		model.addAttribute("pictures", "/season-dates/" + found.code() + "/pictures/");
		return "advisories/date";
	}

	private static DateRow row(CountyDate one, String name, @Nullable String href) {
		return new DateRow(name, href, words(one.early()), words(one.date()), words(one.late()), one.missing(),
				one.marker().use().english());
	}

	private static @Nullable String words(@Nullable LocalDate date) {
		return (date != null) ? DayAndTime.day(date, Language.ENGLISH) : null;
	}

	private County county(String code) {
		return this.regions.find(code).orElseThrow(() -> new NotThere("There is no county '%s' here.".formatted(code)));
	}

	private List<DateRow> rows(County county) {
		return this.dates.of(county)
			.stream()
			.map((one) -> row(one, one.marker().title().english(), "/season-dates/" + one.marker().code()))
			.toList();
	}

	@GetMapping("/season-dates/counties/{county}")
	String county(@PathVariable String county, Model model, HttpServletResponse response) {
		County found = county(county);
		frame(model, response);
		model.addAttribute("county", found);
		model.addAttribute("rows", rows(found));
		model.addAttribute("sources", this.dates.sources(List.of(found)));
		model.addAttribute("papers", Paper.values());
		return "advisories/county-dates";
	}

	@GetMapping("/season-dates/counties/{county}.pdf")
	ResponseEntity<byte[]> pdf(@PathVariable String county, @RequestParam Optional<String> paper) {
		County found = county(county);
		Paper size = Paper.of(paper.orElse(null), found.region());
		Context model = new Context(Locale.ENGLISH);
		model.setVariable("county", found);
		model.setVariable("rows", rows(found));
		model.setVariable("sources", this.dates.sources(List.of(found)));
		model.setVariable("printed", DayWords.of(LocalDate.ofInstant(this.clock.instant(), found.zone())));
		model.setVariable("sender", this.settings.senderName());
		model.setVariable("invented", this.settings.invented());
		byte[] printed = this.printer.print(this.templates.process("advisories/dates-print", model), size,
				this.clock.instant(), found.zone());
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.header(HttpHeaders.CACHE_CONTROL, Caching.anHour())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.inline().filename("dates-" + found.code() + ".pdf").build().toString())
			.body(printed);
	}

}
