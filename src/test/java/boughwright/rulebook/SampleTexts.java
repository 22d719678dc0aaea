package boughwright.rulebook;

import java.util.Map;
import java.util.TreeMap;

/** Two rule files and a table file of a rulebook that is sound, and the means to spoil one of them. */
final class SampleTexts {

    static final String STYLE = "style/fullness.drl";
    static final String SAFETY = "safety/household.drl";
    static final String TOPPER = "sizing/topper.dmn";

    static final Map<String, String> RULES = Map.of(
            STYLE, """
                    package boughwright.rules;

                    import boughwright.brief.Fullness;
                    import boughwright.brief.SeenFrom;
                    import boughwright.brief.Tree;
                    import boughwright.needs.Demand;
                    import boughwright.needs.Dimension;
                    import boughwright.needs.Role;
                    import boughwright.needs.Trait;
                    import java.util.Set;

                    // The darker flower is what makes depth; a full tree hides it unless it is darker still.
                    rule "S-01: A full tree swallows colour, so its darkest flower is darker"
                    when
                        Tree( fullness == Fullness.FULL, height.feet() > 7 )
                    then
                        insert( new Demand.DarkOne(Set.of(Role.FACE_FLOWER), 30.0) );
                    end

                    rule "S-02: A sparse tree shows its trunk, so its balls are matte"
                    when
                        Tree( fullness == Fullness.SPARSE )
                    then
                        insert( new Demand.Prefer(Role.FILLER_BALL, Trait.FINISH, "matte", 0.5) );
                    end

                    rule "S-03: A tree seen from all round takes broader ribbon"
                    when
                        $tree : Tree( seenFrom == SeenFrom.ROUND )
                    then
                        insert( new Demand.Within(Role.BASE_RIBBON, Dimension.WIDTH, $tree.height().feet() > 9 ? 0.08 : 0.06, 0.12) );
                    end
                    """,
            SAFETY, """
                    package boughwright.rules;

                    import boughwright.brief.Household;
                    import boughwright.brief.Room;
                    import boughwright.brief.Tree;
                    import boughwright.needs.Advice;

                    rule "C-01: A cat that swallows tinsel can fall seriously ill, so the kit holds none"
                    when
                        Household( pets )
                    then
                        insert( new Advice("Please hang no tinsel where the cat can reach.", "common practice") );
                    end

                    rule "C-02: A tree close under the ceiling leaves no room for a tall stem"
                    when
                        $tree : Tree()
                        Room( ceiling.isPresent(), ceiling.get().feet() - $tree.height().feet() < 0.5 )
                    then
                        insert( new Advice("Your tree stands close to the ceiling; choose a short topper.", "common practice") );
                    end

                    rule "C-03: A real tree dries out beside a source of heat"
                    when
                        Tree( real )
                        Room( nearHeat )
                    then
                        insert( new Advice("Keep a real tree well away from heat, and water it every day.", "common practice") );
                    end
                    """);

    static final Map<String, String> TABLES = Map.of(TOPPER, """
            <?xml version="1.0" encoding="UTF-8"?>
            <definitions xmlns="https://www.omg.org/spec/DMN/20240513/MODEL/" namespace="sample" name="Topper groupings">
              <itemDefinition name="Height">
                <typeRef>number</typeRef>
                <allowedValues><text>[3..20]</text></allowedValues>
              </itemDefinition>
              <itemDefinition name="Seen from">
                <typeRef>string</typeRef>
                <allowedValues><text>"corner", "wall", "bay", "round"</text></allowedValues>
              </itemDefinition>
              <itemDefinition name="Policy">
                <itemComponent name="rounding"><typeRef>string</typeRef></itemComponent>
                <itemComponent name="least"><typeRef>number</typeRef></itemComponent>
                <itemComponent name="girth"><typeRef>boolean</typeRef></itemComponent>
              </itemDefinition>

              <inputData id="height" name="height"><variable name="height" typeRef="Height"/></inputData>
              <inputData id="seenFrom" name="seen from"><variable name="seen from" typeRef="Seen from"/></inputData>

              <decision id="base" name="Base">
                <variable name="Base" typeRef="number"/>
                <informationRequirement><requiredInput href="#height"/></informationRequirement>
                <decisionTable hitPolicy="UNIQUE">
                  <input><inputExpression typeRef="Height"><text>height</text></inputExpression></input>
                  <output/>
                  <annotation name="reason"/>
            %s    </decisionTable>
              </decision>

              <decision id="seenFromFactor" name="Seen-from factor">
                <variable name="Seen-from factor" typeRef="number"/>
                <informationRequirement><requiredInput href="#seenFrom"/></informationRequirement>
                <decisionTable hitPolicy="UNIQUE">
                  <input><inputExpression typeRef="Seen from"><text>seen from</text></inputExpression></input>
                  <output/>
                  <annotation name="reason"/>
            %s    </decisionTable>
              </decision>

              <decision id="policy" name="Policy">
                <variable name="Policy" typeRef="Policy"/>
                <informationRequirement><requiredInput href="#height"/></informationRequirement>
                <decisionTable hitPolicy="UNIQUE">
                  <input><inputExpression typeRef="Height"><text>height</text></inputExpression></input>
                  <output name="rounding" typeRef="string">
                    <outputValues><text>"up", "nearest", "down"</text></outputValues>
                  </output>
                  <output name="least" typeRef="number"/>
                  <output name="girth" typeRef="boolean"/>
                  <annotation name="reason"/>
            %s    </decisionTable>
              </decision>
            </definitions>
            """.formatted(
            row("[3 .. 5)", "A small tree carries one grouping.", "1") + row("[5 .. 8)", "Two groupings balance a tree.", "2")
                    + row("[8 .. 10)", "A tall tree needs three groupings to hold its tip.", "3") + row("[10 .. 11.5)", "A fourth keeps the tip full.", "4")
                    + row("[11.5 .. 12]", "A twelve-foot tree carries five.", "5") + row("(12 .. 20]", "Beyond, they grow with the surface.", "5 * (height / 12) ** 2"),
            row("\"corner\", \"wall\", \"bay\"", "The groupings face the room.", "1") + row("\"round\"", "The back wants a little more.", "1.2"),
            row("-", "Groupings are whole.", "\"nearest\"", "1", "false")));

    private SampleTexts() {
    }

    private static String row(String input, String reason, String... outputs) {
        StringBuilder row = new StringBuilder("      <rule>\n        <inputEntry><text>" + input + "</text></inputEntry>\n");
        for (String output : outputs) {
            row.append("        <outputEntry><text>").append(output).append("</text></outputEntry>\n");
        }
        return row + "        <annotationEntry><text>" + reason + "</text></annotationEntry>\n      </rule>\n";
    }

    /** The texts with one part of one file replaced; the part must be there. */
    static Map<String, String> with(Map<String, String> texts, String file, String part, String replacement) {
        if (!texts.get(file).contains(part)) {
            throw new IllegalArgumentException(file + " holds no " + part);
        }
        Map<String, String> changed = new TreeMap<>(texts);
        changed.put(file, texts.get(file).replace(part, replacement));
        return changed;
    }

    static int lineOf(String text, String part) {
        return DrlSource.lineAt(text, text.indexOf(part));
    }
}
