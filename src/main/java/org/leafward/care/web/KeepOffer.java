package org.leafward.care.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.KeepLink;
import org.leafward.pages.Viewers;
import org.leafward.register.OpenSites;
import org.leafward.register.Planting;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/**
 * Offers those who are signed in to keep what a calculator answers. The calculators don't
 * know of it, as they lie below and are open to strangers.
 */
@ControllerAdvice
class KeepOffer {

	private static final String CALCULATORS = "/calculators/";

	private final ObjectProvider<Calculations> calculations;

	private final ObjectProvider<OpenSites> sites;

	private final ObjectProvider<Viewers> viewers;

	/** Every page asks its advice, also those that are tested without the rest. */
	KeepOffer(ObjectProvider<Calculations> calculations, ObjectProvider<OpenSites> sites,
			ObjectProvider<Viewers> viewers) {
		this.calculations = calculations;
		this.sites = sites;
		this.viewers = viewers;
	}

	@ModelAttribute
	void addTo(Model model, HttpServletRequest request) {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		if (!path.startsWith(CALCULATORS)) {
			return;
		}
		String calculator = path.substring(CALCULATORS.length());
		Calculations known = this.calculations.getObject();
		if (!known.titles().containsKey(calculator) || this.viewers.getObject().current().stranger()) {
			return;
		}
		try {
			String query = Calculation.query(known.inputs(calculator, first(request)));
			Optional<Planting> planting = planting(request.getParameter("for"));
			String way = planting.map((one) -> "/plantings/%s/keep/".formatted(one.id())).orElse("/keep/");
			model.addAttribute("keep", new KeepLink(way + calculator + "?" + query,
					planting.map((one) -> one.id().value()).orElse(null), planting.map(Planting::label).orElse(null)));
		}
		catch (BadInput ex) {
			// The calculator says what can't be used; there is no answer to keep.
		}
	}

	private static Map<String, String> first(HttpServletRequest request) {
		Map<String, String> first = new LinkedHashMap<>();
		request.getParameterMap().forEach((name, values) -> first.put(name, values[0]));
		return first;
	}

	/** Of others' plantings nothing is told, and neither is that they are there. */
	private Optional<Planting> planting(@Nullable String id) {
		try {
			return (id == null) ? Optional.empty() : Optional.of(this.sites.getObject().planting(UUID.fromString(id)));
		}
		catch (IllegalArgumentException | NotThere ex) {
			return Optional.empty();
		}
	}

}
