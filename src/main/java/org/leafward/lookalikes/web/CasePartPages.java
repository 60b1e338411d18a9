package org.leafward.lookalikes.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.CaseDesk;
import org.leafward.lookalikes.CasePhotos;
import org.leafward.lookalikes.PlantCase;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Photos of a case, what is written to each other, and the way to the help desk. */
@Controller
class CasePartPages {

	private final CasePhotos photos;

	private final CaseDesk desk;

	private final CaseAccess access;

	private final CasePage page;

	CasePartPages(CasePhotos photos, CaseDesk desk, CaseAccess access, CasePage page) {
		this.photos = photos;
		this.desk = desk;
		this.access = access;
		this.page = page;
	}

	@PostMapping("/cases/{id}/photos")
	String add(@PathVariable UUID id, @RequestParam(required = false) @Nullable MultipartFile photo,
			@RequestParam(defaultValue = "") String words, Model model, HttpServletResponse response)
			throws IOException {
		PlantCase one = this.access.seen(id).plantCase();
		try {
			if (photo == null || photo.isEmpty()) {
				throw new BadInput("no photo was chosen", "photo", "choose a JPEG or a PNG first");
			}
			this.photos.add(one.id(), photo.getBytes(), words);
			return "redirect:/cases/" + one.id() + "#photos";
		}
		catch (BadInput ex) {
			return refused(id, ex, model, response);
		}
	}

	@GetMapping("/cases/{id}/photos/{photo}")
	ResponseEntity<byte[]> picture(@PathVariable UUID id, @PathVariable UUID photo) {
		PlantCase one = this.access.seen(id).plantCase();
		byte[] jpeg = this.photos.picture(one.id(), photo)
			.orElseThrow(() -> new NotThere("There is no photo " + photo));
		return ResponseEntity.ok()
			.contentType(MediaType.IMAGE_JPEG)
			.cacheControl(CacheControl.maxAge(Duration.ofHours(1)).cachePrivate())
			.header("X-Content-Type-Options", "nosniff")
			.body(jpeg);
	}

	@PostMapping("/cases/{id}/photos/{photo}/delete")
	String remove(@PathVariable UUID id, @PathVariable UUID photo) {
		PlantCase one = this.access.own(id);
		this.photos.remove(one.id(), photo);
		return "redirect:/cases/" + one.id() + "#photos";
	}

	@PostMapping("/cases/{id}/notes")
	String write(@PathVariable UUID id, @RequestParam(defaultValue = "") String words, Model model,
			RedirectAttributes flash, HttpServletResponse response) {
		CaseAccess.Seen seen = this.access.seen(id);
		try {
			boolean mailed = this.desk.write(seen.plantCase().id(), this.access.me(), seen.desk(), words);
			if (seen.desk()) {
				flash.addFlashAttribute("remarks", List.of(mailed ? "It went to them by mail, too."
						: "No mail left: there is no mail server, or their address is not confirmed. They see it here."));
			}
			return "redirect:/cases/" + seen.plantCase().id() + "#notes";
		}
		catch (BadInput ex) {
			model.addAttribute("typed", words);
			return refused(id, ex, model, response);
		}
	}

	@PostMapping("/cases/{id}/help")
	String help(@PathVariable UUID id, Model model, RedirectAttributes flash, HttpServletResponse response) {
		PlantCase one = this.access.own(id);
		try {
			PlantCase asked = this.desk.ask(one.id());
			flash.addFlashAttribute("remarks", List.of(this.desk.answered(asked)
					? "The help desk was asked. What it writes stands below."
					: "The help desk was asked, but nobody serves your county here yet, so an answer may be long in "
							+ "coming: ask your extension office, too."));
			return "redirect:/cases/" + one.id() + "#notes";
		}
		catch (BadInput ex) {
			return refused(id, ex, model, response);
		}
	}

	@PostMapping("/cases/{id}/assigned")
	String assign(@PathVariable UUID id, @RequestParam(defaultValue = "") String helper, Model model,
			HttpServletResponse response) {
		CaseAccess.Seen seen = this.access.seen(id);
		if (!seen.specialist()) {
			throw new NotThere("There is no case " + id);
		}
		try {
			this.desk.assign(seen.plantCase().id(), helper.isBlank() ? null : new PersonId(person(helper)));
			return "redirect:/cases/" + seen.plantCase().id() + "#notes";
		}
		catch (BadInput ex) {
			return refused(id, ex, model, response);
		}
	}

	private static UUID person(String text) {
		try {
			return UUID.fromString(text.strip());
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("“%s” is nobody".formatted(text), "helper", "choose somebody from the list");
		}
	}

	private String refused(UUID id, BadInput ex, Model model, HttpServletResponse response) {
		response.setStatus(HttpStatus.BAD_REQUEST.value());
		Map<String, String> errors = ex.byField();
		return this.page.show(this.access.seen(id), errors, model);
	}

}
