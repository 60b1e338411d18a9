package org.leafward.advisories.web;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.desk.AdvisorySettings;
import org.leafward.language.Language;
import org.leafward.measure.NotThere;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/**
 * What is in force, for the pages of others: no script, no cookie, nothing that is loaded
 * from elsewhere, in the language that the address says.
 */
@Controller
class EmbedPage {

	private static final String POLICY = "default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'; "
			+ "frame-ancestors *";

	private final Advisories advisories;

	private final Regions regions;

	private final AdvisorySettings settings;

	private final ITemplateEngine templates;

	EmbedPage(Advisories advisories, Regions regions, AdvisorySettings settings, ITemplateEngine templates) {
		this.advisories = advisories;
		this.regions = regions;
		this.settings = settings;
		this.templates = templates;
	}

	@GetMapping("/advisories/embed")
	ResponseEntity<String> all(@RequestParam(defaultValue = "en") String language) {
		return page(null, this.advisories.current(), language);
	}

	@GetMapping("/advisories/{county}/embed")
	ResponseEntity<String> county(@PathVariable String county, @RequestParam(defaultValue = "en") String language) {
		County found = this.regions.find(county)
			.orElseThrow(() -> new NotThere("There is no county '%s' here.".formatted(county)));
		return page(found, this.advisories.current(found.code()), language);
	}

	private ResponseEntity<String> page(@Nullable County county, List<Advisory> current, String code) {
		Language language = Language.of("language", code);
		Context model = new Context(Locale.ENGLISH);
		model.setVariable("spanish", language == Language.SPANISH);
		model.setVariable("county", (county != null) ? county.name() : null);
		model.setVariable("current",
				current.stream().map((one) -> AdvisoryView.of(one, this.regions, language)).toList());
		model.setVariable("base", this.settings.absolute("").toString());
		// From this server alone, as the policy of the page says.
		model.setVariable("css", this.settings.absolute("/css/leafward.css").getPath());
		model.setVariable("more",
				this.settings.absolute("/advisories" + ((county != null) ? "/" + county.code() : "")).toString());
		model.setVariable("invented", this.settings.invented());
		model.setVariable("sender", this.settings.senderName());
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType("text/html;charset=utf-8"))
			.header(HttpHeaders.CACHE_CONTROL, Caching.FOR_A_MINUTE)
			.header("Content-Security-Policy", POLICY)
			.body(this.templates.process("advisories/embed", model));
	}

}
