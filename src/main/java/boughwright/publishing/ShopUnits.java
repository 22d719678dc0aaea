package boughwright.publishing;

import boughwright.measure.Units;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** The unit in which this shop's staff type and read lengths: {@code feet} unless {@code boughwright.units} says {@code metres}. */
@Component
public class ShopUnits {

    private final Units units;

    ShopUnits(@Value("${boughwright.units}") String units) {
        this.units = units.strip().equalsIgnoreCase("metres") ? Units.METRES : Units.FEET;
    }

    public Units units() {
        return units;
    }
}
