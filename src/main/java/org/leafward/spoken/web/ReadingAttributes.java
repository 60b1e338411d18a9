package org.leafward.spoken.web;

import jakarta.servlet.http.HttpServletRequest;
import org.leafward.language.Speech;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells the layout what is chosen, for the form below every page. */
@ControllerAdvice
class ReadingAttributes {

	/**
	 * What is chosen.
	 *
	 * @param language code of the language
	 * @param units code of the units
	 */
	record Reading(String language, String units) {
	}

	@ModelAttribute
	void addTo(Model model, HttpServletRequest request) {
		Speech speech = Reader.of(request);
		model.addAttribute("reading", new Reading(speech.language().code(), speech.units().code()));
	}

}
