using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <content>Most noxious weed seeds in a sample that still agree with the number on the label.</content>
/// <remarks>The printed table of 7 CFR 201.65 (SEED-S21), for 0 to 30 seeds labelled; its formula is not used.</remarks>
public sealed partial class NoxiousWeed
{
    private static readonly Lazy<ImmutableArray<int>> Most = new(() =>
        [
            .. new Table<Step>("Seeds/Data/noxious-tolerances.csv", Step.FromRow)
                .Rows.OrderBy(s => s.Labelled)
                .Select(s => s.MostWithin),
        ]
    );

    /// <summary>Most seeds found that agree with a label.</summary>
    /// <param name="labelledSeeds">Seeds labelled, in the weight of the laboratory's sample; from 0 to 30. Bring a label per
    /// pound to the sample first: <see cref="SeedsInSample"/>.</param>
    /// <returns>Most seeds within tolerance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the table.</exception>
    public static int MostWithinTolerance(int labelledSeeds)
    {
        Guard.Between(labelledSeeds, 0, Most.Value.Length - 1, "seeds (the printed table ends there)", nameof(labelledSeeds));
        return Most.Value[labelledSeeds];
    }

    /// <summary>Seeds in a sample at a number per pound.</summary>
    /// <param name="seedsPerPound">Seeds per lb; finite, at least 0.</param>
    /// <param name="sample">Weight of the sample; finite, above 0.</param>
    /// <returns>Seeds in the sample.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double SeedsInSample(double seedsPerPound, Mass sample)
    {
        double pounds = sample.Pounds;
        return Guard.AtLeast(seedsPerPound, 0, "seeds per lb") * Guard.Above(pounds, 0, "lb", nameof(sample));
    }

    private sealed record Step(int Labelled, int MostWithin, Origin Origin)
    {
        internal static Step FromRow(CsvRow row) =>
            new(row.Integer("labelled_seeds"), row.Integer("most_within_seeds"), row.Origin());
    }
}
