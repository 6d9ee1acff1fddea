using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Sheets;

/// <summary>Passes by seed size: load, rate, walking distance and setting.</summary>
internal static class PassSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var sheet = new SectionWriter("passes", "Spreader passes", SheetPart.Work);
        bool isDrilled = plan.Method == PlantingMethod.Drilled;
        if (plan.Spreader is not { } spreader)
        {
            sheet.Say("The plan names no spreader.");
            return sheet.Close();
        }

        sheet.Say(
            isDrilled
                ? $"{spreader.Name}, {SheetText.Distance(spreader.Swath)} wide. Set it by its own chart, then turn its "
                    + "wheel over the test run and weigh what comes out of its rows."
                : $"{spreader.Name}, swath {SheetText.Distance(spreader.Swath)}. Kinds in one pass differ at most "
                    + "2 to 1 in size; larger and smaller seed in one hopper would sift apart."
        );
        if (!answers.Seed.TryGet(out var seed) || !answers.Spreading.TryGet(out var spreading))
        {
            sheet.Say("There are no passes before the seed is weighed out, see there.");
            return sheet.Close();
        }

        sheet.RestsOn(seed.Blend);
        foreach (var pass in spreading.Passes)
        {
            string name = $"pass-{Amounts.Print(pass.Number, 0)}";
            sheet.Say($"Pass {Amounts.Print(pass.Number, 0)}: {pass.Names}");
            sheet.Figure($"{name}.load", "load", new(SheetText.Weight(pass.Load), SheetAmount.Weight(pass.Load)), pass.LoadLine);
            sheet.Figure($"{name}.rate", "rate", new(SheetText.Rate(pass.Rate), SheetAmount.Rate(pass.Rate)), pass.RateLine);
            if (pass.Laid.TryGet(out var layout))
            {
                sheet.Figure(
                    $"{name}.lanes",
                    "passes",
                    new(
                        $"{Amounts.Print(layout.Passes.Length, 0)} of up to "
                            + $"{Amounts.Print(layout.LongestFeet, 0)} ft, "
                            + $"{Amounts.Print(layout.Spacing, "ft", 1)} apart{Direction(layout)}, "
                            + $"{Amounts.Print(layout.Turns, 0)} turns",
                        SheetAmount.Number(layout.Passes.Length, "passes")
                    ),
                    layout
                );
                string pace = pass.Setting.OrNull() is null ? $" at {Amounts.Print(layout.Request.Speed, "mph", 1)}" : "";
                sheet.Figure(
                    $"{name}.distance",
                    "walking distance",
                    new(
                        $"{SheetText.Distance(layout.Path)}, about {SheetText.Minutes(layout.SpreadingTime)}{pace}",
                        SheetAmount.Distance(layout.Path)
                    ),
                    layout
                );
            }
            else
            {
                var walked = pass.Walk.Distance;
                sheet.Figure(
                    $"{name}.distance",
                    "walking distance",
                    new(SheetText.Distance(walked), SheetAmount.Distance(walked)),
                    pass.Walk
                );
            }

            sheet.Figure(
                $"{name}.test-run",
                $"weigh a test run of {SheetText.Distance(SowingPass.TestRun)}: it must use",
                new(SheetText.Weight(pass.TestRunCatch), SheetAmount.Weight(pass.TestRunCatch)),
                pass.TestRunLine
            );
            if (isDrilled)
            {
                continue;
            }

            if (pass is { Run: { } run, Measured: { } measured } && pass.Setting.TryGet(out var setting))
            {
                sheet.Figure(
                    $"{name}.pace",
                    $"first setting: gate {Amounts.Print(run.Gate, 2)}, as measured with {SheetText.Name(run.Kind)}",
                    new(
                        $"walk 100 ft in {Amounts.Print(setting.TimePer100Feet, "s", 0)} "
                            + $"({Amounts.Print(setting.Speed, "mph", 1)})",
                        SheetAmount.Number(setting.TimePer100Feet.TotalSeconds, "s/100 ft")
                    ),
                    measured,
                    setting
                );
            }
            else
            {
                sheet.Say("None of these kinds was run with this spreader: find the gate by the test run before you sow.");
            }
        }

        return sheet.Close();
    }

    /// <summary>A compass direction only where the outline was walked; taped sides do not know north.</summary>
    private static string Direction(FieldPasses layout) => layout.Outline.Origin is null ? "" : $", towards {layout.Direction}";
}
