package org.leafward.advisories.web;

import io.swagger.v3.oas.annotations.Hidden;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.dates.SeasonDate;
import org.leafward.advisories.picture.Drawn;
import org.leafward.advisories.picture.PictureWriter;
import org.leafward.advisories.picture.Poster;
import org.leafward.advisories.share.ShareKit;
import org.leafward.advisories.shelf.Past;
import org.leafward.language.Language;
import org.leafward.measure.NotThere;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/**
 * Pictures to share, such as {@code wide-es.png}. Strangers may ask for them, so they are
 * drawn one at a time and kept.
 */
@RestController
@Hidden
class Pictures {

	private static final Pattern NAME = Pattern.compile("(wide|square)(-es)?\\.(png|svg)");

	/** Some 60 kB each. */
	private static final int MOST_KEPT = 64;

	private final Past past;

	private final ShareKit kit;

	private final PictureWriter writer;

	private final Clock clock;

	private final Semaphore drawing = new Semaphore(1, true);

	/** By the same picture as SVG, which is soon made. */
	private final Map<String, byte[]> kept = new LinkedHashMap<>(16, 0.75f, true) {

		private static final long serialVersionUID = 1L;

		@Override
		protected boolean removeEldestEntry(Map.Entry<String, byte[]> eldest) {
			return size() > MOST_KEPT;
		}

	};

	Pictures(Past past, ShareKit kit, PictureWriter writer, Clock clock) {
		this.past = past;
		this.kit = kit;
		this.writer = writer;
		this.clock = clock;
	}

	@GetMapping("/advisories/{id}/pictures/{name}")
	ResponseEntity<byte[]> advisory(@PathVariable UUID id, @PathVariable String name) {
		Advisory advisory = this.past.find(new AdvisoryId(id)).at(this.clock.instant());
		return picture(name, (form, language) -> this.kit.picture(advisory, form, language));
	}

	@GetMapping("/season-dates/{marker}/pictures/{name}")
	ResponseEntity<byte[]> marker(@PathVariable String marker, @PathVariable String name) {
		SeasonDate found = SeasonDate.of(marker)
			.orElseThrow(() -> new NotThere("There is no season marker '%s' here.".formatted(marker)));
		return picture(name, (form, language) -> this.kit.picture(found, form, language));
	}

	private ResponseEntity<byte[]> picture(String name, BiFunction<Poster.Form, Language, Optional<Drawn>> drawn) {
		Matcher parts = NAME.matcher(name);
		if (!parts.matches()) {
			throw new NotThere("There is no picture '%s' here.".formatted(name));
		}
		Poster.Form form = parts.group(1).equals("wide") ? Poster.Form.WIDE : Poster.Form.SQUARE;
		Language language = (parts.group(2) != null) ? Language.SPANISH : Language.ENGLISH;
		Drawn picture = drawn.apply(form, language)
			.orElseThrow(() -> new NotThere("This server has no map of counties to draw on."));
		boolean svg = parts.group(3).equals("svg");
		return ResponseEntity.ok()
			.contentType(svg ? MediaType.parseMediaType("image/svg+xml;charset=utf-8") : MediaType.IMAGE_PNG)
			.header(HttpHeaders.CACHE_CONTROL, Caching.anHour())
			.header("Content-Security-Policy", "default-src 'none'")
			.body(svg ? this.writer.svg(picture).getBytes(StandardCharsets.UTF_8) : png(picture));
	}

	private byte[] png(Drawn picture) {
		String key = this.writer.svg(picture);
		synchronized (this.kept) {
			byte[] known = this.kept.get(key);
			if (known != null) {
				return known;
			}
		}
		this.drawing.acquireUninterruptibly();
		try {
			byte[] made = this.writer.png(picture);
			synchronized (this.kept) {
				this.kept.put(key, made);
			}
			return made;
		}
		finally {
			this.drawing.release();
		}
	}

}
