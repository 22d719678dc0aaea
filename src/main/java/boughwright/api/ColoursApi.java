package boughwright.api;

import boughwright.brief.Palette;
import boughwright.brief.Word;
import boughwright.photo.Ground;
import boughwright.photo.Photo;
import boughwright.photo.PhotoColours;
import boughwright.photo.PhotoReading;
import boughwright.photo.Refusal;
import boughwright.photo.RoomPalette;
import boughwright.text.Text;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The colours of a picture, for other programs; nothing of the picture is kept. */
@RestController
class ColoursApi {

    /** One colour as other programs read it; the share has four digits. */
    record Colour(String hex, double share) {
    }

    /** A finish that is likely, why, and the colour of its highlight if one was seen. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Finish(String finish, String reason, String highlight) {
    }

    /** A palette drawn from the colours; {@code filled} names those that the picture lacks. */
    record Suggested(String main, String second, String spark, String ground, List<String> filled) {
    }

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Colours(List<Colour> colours, Suggested palette, Finish finish, double setAside) {
    }

    /**
     * @param ground {@code keep}, as for a room, or {@code drop}, as for a product
     * @param most colours, 2 to 5
     */
    @Operation(summary = "The dominant colours of a picture, and a palette drawn from them; nothing of the picture is kept")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(required = true, description = "The picture, at most 25 MB and 80 million pixels", content = {
        @Content(mediaType = "image/jpeg", schema = @Schema(type = "string", format = "binary")),
        @Content(mediaType = "image/png", schema = @Schema(type = "string", format = "binary")),
        @Content(mediaType = "image/gif", schema = @Schema(type = "string", format = "binary"))})
    @ApiResponse(responseCode = "200", description = "Colours with their shares, the largest first; a palette for a tree; with ground=drop the likely finish",
            content = @Content(mediaType = "application/json", schema = @Schema(implementation = Colours.class)))
    @ApiResponse(responseCode = "400", description = "What was asked for is not understood, or the picture is damaged", content = @Content(mediaType = "application/problem+json"))
    @ApiResponse(responseCode = "413", description = "The picture has too many bytes or pixels", content = @Content(mediaType = "application/problem+json"))
    @ApiResponse(responseCode = "415", description = "Not a picture of a kind that is read", content = @Content(mediaType = "application/problem+json"))
    @PostMapping(path = "/api/colours", consumes = {"image/jpeg", "image/png", "image/gif"})
    ResponseEntity<?> colours(InputStream picture,
            @Parameter(description = "keep the background, as in a room, or drop it, as behind a product",
                    schema = @Schema(allowableValues = {"keep", "drop"})) @RequestParam(defaultValue = "keep") String ground,
            @Parameter(description = "colours at most", schema = @Schema(type = "integer", minimum = "2", maximum = "5")) @RequestParam(defaultValue = "5") String most)
            throws IOException {
        Optional<Ground> asked = Word.read(Ground.class, ground);
        if (asked.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.BAD_REQUEST, "ground", Text.of("api.bad-colours.title"), Text.of("api.bad-ground", ground));
        }
        if (!most.matches("[" + Photo.FEWEST_COLOURS + "-" + Photo.MOST_COLOURS + "]")) {
            return ProposalsApi.problem(HttpStatus.BAD_REQUEST, "most", Text.of("api.bad-colours.title"), Text.of("api.bad-most", most));
        }
        // One byte more than is taken, so that too many are told.
        byte[] bytes = picture.readNBytes((int) Photo.MOST_BYTES + 1);
        PhotoReading reading = Photo.read(bytes, asked.get(), Integer.parseInt(most));
        if (reading instanceof PhotoReading.Refused refused) {
            return ProposalsApi.problem(status(refused.why()), "picture", Text.of("api.bad-picture.title"), refused.why().sentence());
        }
        return ResponseEntity.ok(answer(((PhotoReading.Read) reading).colours()));
    }

    private static HttpStatus status(Refusal why) {
        return switch (why) {
            case TOO_LARGE, TOO_MANY_PIXELS -> HttpStatus.PAYLOAD_TOO_LARGE;
            case NO_PICTURE, OTHER_KIND, INKS -> HttpStatus.UNSUPPORTED_MEDIA_TYPE;
            case EMPTY, BROKEN, CLEAR -> HttpStatus.BAD_REQUEST;
        };
    }

    private static Colours answer(PhotoColours found) {
        RoomPalette drawn = RoomPalette.of(found.colours());
        Palette palette = drawn.palette();
        return new Colours(found.colours().stream().map(c -> new Colour(c.colour().hex(), digits(c.share()))).toList(),
                new Suggested(palette.main().hex(), palette.second().hex(), palette.spark().hex(), palette.ground().hex(), drawn.filled()),
                found.finish().map(f -> new Finish(f.finish().word(), f.reason(), f.highlight().map(h -> h.hex()).orElse(null))).orElse(null),
                digits(found.setAside()));
    }

    private static double digits(double share) {
        return Math.round(share * 10_000) / 10_000.0;
    }
}
