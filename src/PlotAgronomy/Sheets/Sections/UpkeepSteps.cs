using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>The work on a stand of which nothing is sown.</summary>
internal static class UpkeepSteps
{
    internal static IEnumerable<string> Of(PlotAnswers answers, StandUpkeep stand, string? fertilizer)
    {
        if (fertilizer is not null)
        {
            yield return $"Spread the fertilizer, {fertilizer}, on dry leaves{VerdictSection.PlannedFor(answers.Plan)}.";
        }

        foreach (string work in stand.Work)
        {
            yield return work;
        }

        string dates = stand.SeedingDates.IsEmpty ? "" : $" (published days: {string.Join("; ", stand.SeedingDates)})";
        string below = Amounts.Print(StandUpkeep.ThickenBelow, 1);
        yield return stand.IsThin
            ? $"It is thinner than {below} of a full stand: plan seed of {SheetText.Name(stand.Kind)} to thicken it{dates}."
            : $"Thicken it with seed of {SheetText.Name(stand.Kind)} when less than {below} of a full stand is left{dates}.";
        if (answers.Soil.Told.Sampling.OrNull() is { NextFrom: { } from, NextBy: { } by } sampling)
        {
            yield return $"Test the soil again between {SheetText.Date(from)} and {SheetText.Date(by)}, "
                + $"{Amounts.Print(sampling.Depth, "in", 0)} deep, {Amounts.Print(sampling.FewestCores, 0)} to "
                + $"{Amounts.Print(sampling.MostCores, 0)} cores.";
        }
    }
}
