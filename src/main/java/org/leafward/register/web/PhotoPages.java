package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Formats;
import org.leafward.register.OpenSites;
import org.leafward.register.PlantPhoto;
import org.leafward.register.PlantPhotos;
import org.leafward.register.Planting;
import org.leafward.register.Site;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** The photos of a planting. Only those who may change it see them. */
@Controller
class PhotoPages {

	/** A photo never changes under its address; it may be deleted. */
	private static final Duration KEPT = Duration.ofHours(1);

	private final PlantPhotos photos;

	private final OpenSites sites;

	PhotoPages(PlantPhotos photos, OpenSites sites) {
		this.photos = photos;
		this.sites = sites;
	}

	/**
	 * A photo on the page.
	 *
	 * @param id identifier
	 * @param width px
	 * @param height px
	 * @param words what is seen on it
	 * @param day when it was taken
	 */
	record Shown(UUID id, int width, int height, String words, String day) {
	}

	@GetMapping("/plantings/{id}/photos")
	String photos(@PathVariable UUID id, Model model) {
		Planting planting = this.sites.planting(id);
		Site site = this.sites.own(planting.site().value());
		return show(planting, site, "", this.photos.today(site).toString(), Map.of(), model);
	}

	@PostMapping("/plantings/{id}/photos")
	String add(@PathVariable UUID id, @RequestParam(required = false) @Nullable MultipartFile photo,
			@RequestParam(defaultValue = "") String words, @RequestParam(defaultValue = "") String day, Model model,
			HttpServletResponse response) throws IOException {
		Planting planting = this.sites.planting(id);
		Site site = this.sites.own(planting.site().value());
		try {
			if (photo == null || photo.isEmpty()) {
				throw new BadInput("no photo was chosen", "photo", "choose a JPEG or a PNG first");
			}
			this.photos.add(site, planting.id(), photo.getBytes(), words, day);
			return "redirect:/plantings/" + planting.id() + "/photos";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return show(planting, site, words, day, ex.byField(), model);
		}
	}

	@GetMapping("/plantings/{id}/photos/{photo}")
	ResponseEntity<byte[]> picture(@PathVariable UUID id, @PathVariable UUID photo) {
		Planting planting = this.sites.planting(id);
		byte[] jpeg = this.photos.picture(planting.id(), photo)
			.orElseThrow(() -> new NotThere("There is no photo " + photo));
		return ResponseEntity.ok()
			.contentType(MediaType.IMAGE_JPEG)
			.cacheControl(CacheControl.maxAge(KEPT).cachePrivate())
			.header("X-Content-Type-Options", "nosniff")
			.body(jpeg);
	}

	@PostMapping("/plantings/{id}/photos/{photo}/delete")
	String remove(@PathVariable UUID id, @PathVariable UUID photo) {
		Planting planting = this.sites.planting(id);
		this.photos.remove(planting.id(), photo);
		return "redirect:/plantings/" + planting.id() + "/photos";
	}

	private String show(Planting planting, Site site, String words, String day, Map<String, String> errors,
			Model model) {
		List<PlantPhoto> photos = this.photos.of(planting.id());
		Formats formats = new Formats(this.photos.today(site).getYear());
		model.addAttribute("section", "sites");
		model.addAttribute("planting", planting);
		model.addAttribute("photos",
				photos.stream()
					.map((one) -> new Shown(one.id(), one.width(), one.height(), one.words(), formats.day(one.day())))
					.toList());
		model.addAttribute("full", photos.size() >= PlantPhotos.MOST);
		model.addAttribute("words", words);
		model.addAttribute("day", day);
		model.addAttribute("errors", errors);
		return "register/photos";
	}

}
