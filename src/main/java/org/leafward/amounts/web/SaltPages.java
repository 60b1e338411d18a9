package org.leafward.amounts.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.stream.Stream;
import org.leafward.amounts.salt.DeIcer;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.salt.Extract;
import org.leafward.amounts.salt.SaltedBed;
import org.leafward.amounts.soiltest.SoilTreatment;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.pages.Choice;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The calculators of salt and of the soil test. Nothing is kept; an address is a result.
 */
@Controller
class SaltPages {

	@GetMapping("/calculators/salt")
	String salt(@ModelAttribute("asked") SaltRequest asked, @RequestParam(defaultValue = "false") boolean fill,
			Model model, HttpServletResponse response) {
		boolean answered = asked.asked() && !fill;
		SaltRequest form = answered ? asked.shown() : Inputs.over(SaltRequest.class, asked, SaltRequest.usual());
		form(form, model);
		model.addAttribute("causes",
				Stream.of(SaltedBed.Cause.DE_ICING, SaltedBed.Cause.FERTILISER)
					.map((one) -> new Choice(Calculators.code(one), one.words()))
					.toList());
		model.addAttribute("products", Calculators.choices(DeIcer.values(), DeIcer::words));
		Calculators.answer(answered, model, response, () -> {
			SaltAnswer answer = form.answer();
			model.addAttribute("lead", answer.leaching().amount().words());
			model.addAttribute("explanation", answer.explanation());
			model.addAttribute("afterThaw", answer.afterThaw());
			model.addAttribute("beforeWinter", answer.beforeWinter());
		});
		return "amounts/salt";
	}

	@GetMapping("/calculators/soil-test")
	String soilTest(@ModelAttribute("asked") SoilTestRequest asked, @RequestParam(defaultValue = "false") boolean fill,
			Model model, HttpServletResponse response) {
		boolean answered = asked.asked() && !fill;
		SoilTestRequest form = answered ? asked.shown()
				: Inputs.over(SoilTestRequest.class, asked, SoilTestRequest.usual());
		form(form, model);
		Calculators.answer(answered, model, response, () -> {
			SoilTreatment treatment = form.read().treatment();
			model.addAttribute("lead", treatment.amount().words());
			model.addAttribute("retest", treatment.retest());
			model.addAttribute("explanation", treatment.amount().explanation());
		});
		return "amounts/soil-test";
	}

	private static void form(Object form, Model model) {
		model.addAttribute("form", form);
		model.addAttribute("extracts", Calculators.choices(Extract.values(), Extract::words));
		model.addAttribute("soils", Calculators.choices(TextureClass.values(), TextureClass::words));
		model.addAttribute("drainages",
				List.of(Drainage.UNTESTED, Drainage.GOOD, Drainage.SLOW, Drainage.NONE)
					.stream()
					.map((one) -> new Choice(Calculators.code(one), one.words()))
					.toList());
	}

}
