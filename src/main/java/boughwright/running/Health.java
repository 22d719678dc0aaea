package boughwright.running;

import boughwright.publishing.ShopDoor;
import org.springframework.boot.actuate.health.HealthIndicator;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What must be so before a customer is sent here, beside the database. */
@Configuration(proxyBeanMethods = false)
class Health {

    /** The rulebook is compiled and the shelf is open. */
    @Bean
    HealthIndicator rulebook(ShopDoor shop) {
        return () -> health(shop.open());
    }

    /** The solver's native library is loaded, and has made a kit. */
    @Bean
    HealthIndicator solver(ShopDoor shop) {
        return () -> health(shop.warm());
    }

    private static org.springframework.boot.actuate.health.Health health(boolean up) {
        return (up ? org.springframework.boot.actuate.health.Health.up() : org.springframework.boot.actuate.health.Health.outOfService()).build();
    }
}
