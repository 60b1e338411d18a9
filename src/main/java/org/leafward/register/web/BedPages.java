package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.pages.Choice;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.OpenSites;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The beds of a site: made, changed, filled and removed. */
@Controller
class BedPages {

	private final Beds beds;

	private final Register register;

	private final OpenSites sites;

	BedPages(Beds beds, Register register, OpenSites sites) {
		this.beds = beds;
		this.register = register;
		this.sites = sites;
	}

	@GetMapping("/sites/{id}/beds/new")
	String fresh(@PathVariable UUID id, Model model) {
		return form(this.sites.own(id), null, BedForm.EMPTY, List.of(), Map.of(), model);
	}

	@PostMapping("/sites/{id}/beds/new")
	String add(@PathVariable UUID id, @ModelAttribute("form") BedForm form,
			@RequestParam(defaultValue = "") List<String> planting, Model model, HttpServletResponse response) {
		Site site = this.sites.own(id);
		try {
			NewBed wanted = form.toBed();
			this.register.together(() -> {
				Bed bed = this.beds.add(site.id(), wanted);
				this.beds.fill(bed.id(), ticked(planting));
				return bed;
			});
			return "redirect:/sites/" + site.id() + "#plantings";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(site, null, form, planting, ex.byField(), model);
		}
	}

	@GetMapping("/beds/{id}")
	String bed(@PathVariable UUID id, Model model) {
		Bed bed = this.sites.bed(id);
		return form(this.register.require(bed.site()), bed, BedForm.of(bed),
				this.beds.plantingsIn(bed.id()).stream().map((one) -> one.id().toString()).toList(), Map.of(), model);
	}

	@PostMapping("/beds/{id}")
	String change(@PathVariable UUID id, @ModelAttribute("form") BedForm form,
			@RequestParam(defaultValue = "") List<String> planting, Model model, HttpServletResponse response) {
		Bed bed = this.sites.bed(id);
		Site site = this.register.require(bed.site());
		try {
			NewBed wanted = form.toBed();
			this.register.together(() -> {
				this.beds.fill(bed.id(), ticked(planting));
				return this.beds.change(bed.id(), (now) -> wanted);
			});
			return "redirect:/sites/" + site.id() + "#plantings";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return form(site, bed, form, planting, ex.byField(), model);
		}
	}

	@PostMapping("/beds/{id}/remove")
	String remove(@PathVariable UUID id) {
		Bed bed = this.sites.bed(id);
		this.beds.remove(bed.id());
		return "redirect:/sites/" + bed.site() + "#plantings";
	}

	private static Set<PlantingId> ticked(List<String> given) {
		return given.stream()
			.flatMap((one) -> WateringRequest.plantingId("planting", one).stream())
			.collect(Collectors.toSet());
	}

	private String form(Site site, @Nullable Bed bed, BedForm form, List<String> ticked, Map<String, String> errors,
			Model model) {
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("bed", bed);
		model.addAttribute("form", form);
		model.addAttribute("ticked", ticked);
		model.addAttribute("plantings",
				this.register.plantingsOf(site.id())
					.stream()
					.map((one) -> new Choice(one.id().toString(), one.label()))
					.toList());
		model.addAttribute("suns", own(Sun.values(), Sun::words));
		model.addAttribute("winds", own(Wind.values(), Wind::words));
		model.addAttribute("errors", errors);
		return "register/bed-form";
	}

	private static <E extends Enum<E>> List<Choice> own(E[] constants, Function<E, String> words) {
		List<Choice> all = new ArrayList<>(List.of(new Choice("", "as at the whole site")));
		all.addAll(RegisterPages.choices(constants, words));
		return all;
	}

}
