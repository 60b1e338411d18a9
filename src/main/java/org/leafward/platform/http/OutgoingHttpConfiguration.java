package org.leafward.platform.http;

import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Lays the bounds on Boot's builder of HTTP clients. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(HttpSettings.class)
class OutgoingHttpConfiguration {

	@Bean
	OutgoingHttp outgoingHttp(HttpSettings settings) {
		return new OutgoingHttp(settings);
	}

}
