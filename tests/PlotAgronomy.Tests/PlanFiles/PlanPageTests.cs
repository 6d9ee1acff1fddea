using System.Text;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Tests.House;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>The page on the plan file is written from the declarations that read and write the file.</summary>
[Trait("Category", "Generated")]
public class PlanPageTests
{
    private const string Opening = """
        # The plan file

        A plan file describes one plot and one planting. The command `start` asks for what is in it and writes it; this page is for changing it by hand, or writing one (`start` keeps no comments of yours). It is JSON; comments and trailing commas are allowed. Amounts are text with a unit, as people write them: `"0.62 ac"`, `"26,000 ft2"`, `"1.5 oz/1000 ft2"`, `"85 %"`, `"1 lb 9 oz"`, `"14 ft 6 in"`. A ton is the US short ton unless `t` or `tonne` is written. A day is typed as `"2026-09-12"` or `"Sep 12, 2026"`; what may be two days is asked. Unknown fields are mistakes; nothing is guessed. `check FILE` reports every mistake at once with line, column and JSON path.

        [plan.schema.json](plan.schema.json) is the JSON Schema (draft 2020-12), written from the same declarations as this page. Examples stand in `samples/data/`: whole plans, a county report whose lime rate lacks its labels, and a plan with a strip reading alone.

        ## How it is used

        - What the laboratory printed is used first, with its own labels; our own sum stands beside it, and a finding reports a real difference.
        - Nothing is required that is not printed. A plan may hold a plot and a printed recommendation and nothing else, or seed alone, or lime alone, or no report at all: the sheet then says what can be said, asks for the rest, and without a report prints a card to take the sample by.
        - A field that may be left out may also say `"not stated"`, which is the same. What a printed rate of lime leaves open (of which lime, to which pH, how deep) is asked of the laboratory, and the orders under each plausible answer stand side by side. Without a printed depth the rate is taken as it stands.
        - `methods` names the published systems. Left out, whose recommendation is printed, the laboratory or the place chooses, and the sheet says which and why; where several could, they stand side by side. A system whose numbers were not yet checked against the publication answers only where it is named there, and says so in a finding.
        - `homePh` is a pH read with a strip or a meter: a range of lime to plan by, never an order.
        - Shares of a full stand must come to 1.0, or to `totalShare`. A rate says whether it counts pure live seed or bulk seed; it is taken as written for the plan's `method` unless `rateFor` says another.
        - Of several lots of one kind, the one with the cheapest living pound is taken, unless the kind names a `lot`.
        - With an area alone there is no pass plan: the walking distance is area / swath, and a finding asks for sides.
        - On a plot that is only browsed nothing is removed. A crop that is cut and carried off needs its yield.
        - Lengths may be counted in paces once the plan says how long they are: `"pace": "100 ft in 40 paces"`, then `"57 paces"`. Any number of sides with the diagonals from the first corner has a shape; pieces are added and taken off.
        - What is already there is an offer at price 0 with the number `available`; it is used first, and nothing more is bought of an offer than there is. `use-up FILE` tells how much ground it does.
        - Numbers stand without quotes, unit or sign: `"cce": 88`, `"price": 5.75`, `"gate": 3`. Amounts stand in quotes with their unit: `"germination": "85 %"`, `"package": "50 lb"`.
        - A `tag` is typed as it stands, line by line. Seed without a tag is weighed out in cases only, until a home test.
        - How something was taken that may be typed in more than one way (a month, a rate in bushels, a line of a tag) is told, and is no mistake.
        - Without `limeDate` the pH on planting day stays open.

        ## A whole plan

        An owner with paces in place of a tape, a report without a buffer reading, what lay in the store, a shed and a shoulder spreader: `samples/data/paced-corner.json`. What the report does not print is left out. Every `{ ... }` is a part with a table of its own below; every `[ ... ]` is a list. Copy it, put your own figures in, strike out what you do not have, and let `check` look for slips.

        ```json
        EXAMPLE
        ```

        ## How it is written

        `PlanFile.Write` writes a plan that reads back as the same plan. What was left out stays out. A tag is written by its parts, and an outline file by its corners. The unit in which an amount was typed is not kept, but for paces: it is written in the unit of the examples below, or in another in which it reads back to the last digit. Shares of a full stand above 2, or with a total outside 0.1 to 3, are written as rates of pure live seed. Every lot that is sown stands among the lots on offer. What a plan from code holds and a file has no field for, such as an area corrected for its slope, is refused with its path.


        """;

    private static string WholePlan => File.ReadAllText(Repository.PathOf("samples/data/paced-corner.json")).ReplaceLineEndings("\n");

    /// <summary>Source: Heron's formula by hand, 0.418 acre; a rate without its method is for the plan's own.</summary>
    [Fact]
    public void The_whole_plan_on_the_page_is_read_and_solved()
    {
        var reading = PlanFile.Read(WholePlan);
        Assert.Empty(reading.Problems);
        Assert.Equal(0.4185, reading.Plan!.Plot.Area.Acres, 5e-4);
        Assert.Equal(2, reading.Plan.FertilizerOffers.Single(o => o.Available is not null).Available);
        Assert.Contains(reading.Plan.Solve().Questions, q => q.Code == "lime-ask-basis");
    }

    [Fact]
    public void The_page_is_current() => GeneratedDocsTests.AssertCurrent("docs/plan-file.md", Page());

    private static string Page()
    {
        var page = new StringBuilder(Opening.ReplaceLineEndings("\n").Replace("EXAMPLE", WholePlan.TrimEnd('\n'), StringComparison.Ordinal));
        foreach (var part in PlanSchema.Definitions.Where(d => d.Fields.Count > 0))
        {
            page.Append($"## {part.Name}\n\n{part.Meaning}\n\n");
            string oneOf = string.Join(", ", part.Fields.Where(f => f.Need == PlanNeed.OneOf).Select(f => $"`{f.Name}`"));
            if (oneOf.Length > 0)
            {
                page.Append($"Exactly one of {oneOf}.\n\n");
            }

            page.Append("| field | value | meaning |\n|---|---|---|\n");
            foreach (var field in part.Fields)
            {
                page.Append($"| `{field.Name}`{(field.Need == PlanNeed.Required ? " (required)" : "")} | {field.InWords} | {field.Meaning} |\n");
            }

            page.Append('\n');
        }

        return page.ToString().TrimEnd('\n') + "\n";
    }
}
