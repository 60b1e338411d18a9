package org.leafward.pages.web;

import java.time.Clock;
import java.time.LocalDate;

import jakarta.servlet.http.HttpServletRequest;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

import org.leafward.pages.Formats;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;

/** Gives every page the viewer and the formats that the layout asks for. */
@ControllerAdvice
class PageAttributes {

	private static final Viewer STRANGER = new Viewer(null, "", false, false);

	private final ObjectProvider<Viewers> viewers;

	private final ObjectProvider<Clock> clock;

	PageAttributes(ObjectProvider<Viewers> viewers, ObjectProvider<Clock> clock) {
		this.viewers = viewers;
		this.clock = clock;
	}

	@ModelAttribute
	void addTo(Model model, HttpServletRequest request) {
		if (forProgram(request) || isCalendar(request)) {
			return;
		}
		model.addAttribute("viewer", viewer());
		model.addAttribute("formats", formats());
		model.addAttribute("here", here(request));
	}

	/** Below {@code /api/} there are no pages. */
	static boolean forProgram(HttpServletRequest request) {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		return path.equals("/api") || path.startsWith("/api/");
	}

	/** Calendar programs ask far more often than all people together. */
	private static boolean isCalendar(HttpServletRequest request) {
		return request.getRequestURI().endsWith(".ics");
	}

	/**
	 * Where to come back to; the start where that is no page, or its address a secret.
	 * Secrets come in queries too, so only those of the calculators are kept.
	 */
	private static String here(HttpServletRequest request) {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		if (!request.getMethod().equals("GET") || SecretAddresses.isSecret(path) || path.equals("/error")) {
			return "/";
		}
		boolean kept = request.getQueryString() != null && path.startsWith("/calculators/");
		return kept ? path + "?" + request.getQueryString() : path;
	}

	Viewer viewer() {
		Viewers known = this.viewers.getIfAvailable();
		return (known != null) ? known.current() : STRANGER;
	}

	Formats formats() {
		return new Formats(LocalDate.now(this.clock.getIfAvailable(Clock::systemUTC)).getYear());
	}

}
