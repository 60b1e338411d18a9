package org.leafward.climate.source;

import java.time.Clock;
import java.time.Duration;
import org.leafward.platform.http.HttpSettings;
import org.leafward.platform.http.OutgoingHttp;
import org.springframework.util.unit.DataSize;
import org.springframework.web.client.RestClient;

/** A door to a server on this machine, with short waits. */
public final class DownloadFixture {

	private DownloadFixture() {
	}

	public static Download impatient(Clock clock) {
		return with(Duration.ofMillis(400), clock);
	}

	public static Download patient(Clock clock) {
		return with(Duration.ofSeconds(20), clock);
	}

	private static Download with(Duration wait, Clock clock) {
		RestClient.Builder builder = RestClient.builder();
		new OutgoingHttp(new HttpSettings(Duration.ofSeconds(5), wait, DataSize.ofKilobytes(200), "", true, false))
			.customize(builder);
		return new Download(builder, clock);
	}

}
