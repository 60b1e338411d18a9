package org.leafward.amounts.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.leafward.amounts.cover.Cover;
import org.leafward.amounts.cover.CoverTonight;
import org.leafward.amounts.cover.NightSky;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.SiteLight;
import org.leafward.climate.core.light.LightSource;
import org.leafward.pages.Choice;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** The calculators of light and cover. Nothing is kept; an address is a result. */
@Controller
class LightPages {

	/**
	 * Lowest nights by kind, °C: 40, 45, 50, 55 and 60 °F; seed sellers' lists, and
	 * memory.
	 */
	private static final List<Choice> NIGHTS = List.of(new Choice("4.4", "4 °C (40 °F): cabbages, onions, pansies"),
			new Choice("7.2", "7 °C (45 °F): lettuce, petunias, marigolds"),
			new Choice("10", "10 °C (50 °F): tomatoes, squash, zinnias"),
			new Choice("12.8", "13 °C (55 °F): peppers, basil, most houseplants"),
			new Choice("15.6", "16 °C (60 °F): eggplants, cucumbers, melons"));

	private final Clock clock;

	LightPages(Clock clock) {
		this.clock = clock;
	}

	@GetMapping("/calculators/light")
	String light(@ModelAttribute("asked") LightRequest asked, @RequestParam(defaultValue = "false") boolean fill,
			Model model, HttpServletResponse response) {
		boolean answered = asked.asked() && !fill;
		LightRequest form = answered ? asked : Inputs.over(LightRequest.class, asked,
				LightRequest.usual(LocalDate.now(this.clock).plusDays(HardeningRamp.USUAL_DAYS + 1L)));
		model.addAttribute("form", form);
		model.addAttribute("starts", Calculators.choices(StartingPlace.values(), StartingPlace::words));
		model.addAttribute("units", Calculators.choices(LampUnit.values(), LampUnit::words));
		model.addAttribute("sources",
				Calculators.choices(Stream.of(LightSource.values())
					.filter((one) -> one != LightSource.BLUE_SKY)
					.toArray(LightSource[]::new), LightPages::lamp));
		model.addAttribute("sites", Calculators.choices(SiteLight.values(), SiteLight::words));
		model.addAttribute("nights", NIGHTS);
		Calculators.answer(answered, model, response, () -> {
			LightAnswer answer = form.answer();
			model.addAttribute("lead", answer.lead());
			model.addAttribute("change", answer.change());
			model.addAttribute("picture", answer.picture());
			model.addAttribute("explanation", answer.explanation());
		});
		return "amounts/light";
	}

	@GetMapping("/calculators/cover")
	String cover(@ModelAttribute("asked") CoverRequest asked, Model model, HttpServletResponse response) {
		CoverRequest form = asked.asked() ? asked : CoverRequest.usual();
		model.addAttribute("form", form);
		model.addAttribute("units", List.of(new Choice("fahrenheit", "°F"), new Choice("celsius", "°C")));
		model.addAttribute("skies", Calculators.choices(NightSky.values(), NightSky::words));
		model.addAttribute("covers",
				Stream
					.concat(Stream.of(new Choice(CoverRequest.ANY, "whatever is enough")),
							Calculators.choices(Cover.values(), Cover::words).stream())
					.toList());
		Calculators.answer(asked.asked(), model, response, () -> {
			CoverTonight night = form.answer();
			model.addAttribute("lead", night.amount().words());
			model.addAttribute("explanation", night.amount().explanation());
		});
		return "amounts/cover";
	}

	/** As people call them; white LEDs come closest to cool white tubes, from memory. */
	private static String lamp(LightSource source) {
		return (source == LightSource.COOL_WHITE_FLUORESCENT) ? "cool-white tube or white LED"
				: source.name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

}
