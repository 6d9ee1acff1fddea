using System.Collections.Immutable;
using MathNet.Numerics.Distributions;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>Yield and use from cages: what grew inside, and how much of it is missing outside.</summary>
/// <remarks>Use is that of all pairs together; below 0 where more stood outside by chance, which is reported and not cut. Growth
/// inside and outside is taken as the same.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class CageOutcome : IWorkedResult
{
    private readonly double dryPart;
    private readonly double meanInside;
    private readonly double meanOutside;

    private CageOutcome(ClippingEntry clipping)
    {
        Clipping = clipping;
        dryPart = clipping.DryMatter?.Value ?? 1;
        meanInside = clipping.Pairs.Average(p => p.InsideGrams) * dryPart;
        meanOutside = clipping.Pairs.Average(p => p.OutsideGrams) * dryPart;
    }

    /// <summary>Gets the clipping.</summary>
    public ClippingEntry Clipping { get; }

    /// <summary>Gets the dry matter that grew inside the cages.</summary>
    public ApplicationRate Yield => Rate(meanInside);

    /// <summary>Gets the low end of the yield, 0 where chance reaches below; null with one cage.</summary>
    public ApplicationRate? YieldLow => Margin is { } margin ? Rate(Math.Max(0, meanInside - margin)) : null;

    /// <summary>Gets the high end of the yield; null with one cage.</summary>
    public ApplicationRate? YieldHigh => Margin is { } margin ? Rate(meanInside + margin) : null;

    /// <summary>Gets the part that was eaten, in percent of what grew; below 0 by chance.</summary>
    public double UsePercent => RecordMath.UsePercent(meanInside, meanOutside);

    /// <summary>Gets the low end of the use; null with one cage.</summary>
    public double? UsePercentLow => UseMargin is { } margin ? UsePercent - margin : null;

    /// <summary>Gets the high end of the use; null with one cage.</summary>
    public double? UsePercentHigh => UseMargin is { } margin ? UsePercent + margin : null;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var remarks = new List<Finding>();
            if (Clipping.Pairs.Length < RecordConstants.All["fewest-cages"])
            {
                remarks.Add(FindingCatalog.Create(RecordCodes.FewCages, ("count", Amounts.Print(Clipping.Pairs.Length, 0))));
            }

            if (UsePercent < 0)
            {
                remarks.Add(FindingCatalog.Create(RecordCodes.NegativeUse, ("use", Amounts.Print(UsePercent, 0))));
            }

            return Finding.InOrder(remarks);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => RecordFormulas.All.SourcesOf("record-cage-yield", "record-cage-use");

    private int Pairs => Clipping.Pairs.Length;

    /// <summary>Half the range of the mean inside, in grams.</summary>
    private double? Margin => Pairs > 1 ? Student * Deviation(p => p.InsideGrams * dryPart, meanInside) / Math.Sqrt(Pairs) : null;

    /// <summary>Half the range of the use: the pairs' departures from the common ratio.</summary>
    private double? UseMargin
    {
        get
        {
            double kept = meanOutside / meanInside;
            return Pairs > 1
                ? 100
                    * Student
                    * Deviation(p => (p.OutsideGrams - (kept * p.InsideGrams)) * dryPart, 0)
                    / Math.Sqrt(Pairs)
                    / meanInside
                : null;
        }
    }

    private double Student => StudentT.InvCDF(0, 1, Pairs - 1, 1 - ((1 - RecordConstants.All["confidence"]) / 2));

    /// <summary>Yield and use of one clipping.</summary>
    /// <param name="clipping">Entry of the book.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentException">Nothing grew in any cage.</exception>
    public static CageOutcome Of(ClippingEntry clipping)
    {
        ArgumentNullException.ThrowIfNull(clipping);
        return clipping.Pairs.Any(p => p.InsideGrams > 0)
            ? new(clipping)
            : throw new ArgumentException("Nothing grew in any cage: there is no use to tell.", nameof(clipping));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            RecordFormulas
                .All["record-cage-yield"]
                .Line(
                    $"{Amounts.Print(Yield.PoundsPerAcre, 0)} lb/ac",
                    ("dry", Amounts.Print(meanInside, 2)),
                    FormulaTable.SquareFeetPerAcre,
                    ("grams in a lb", Amounts.Print(RecordMath.GramsPerPound, 3)),
                    ("clipped", Amounts.Print(Clipping.SquareFeet, 3))
                ),
            RecordFormulas
                .All["record-cage-use"]
                .Line(
                    $"{Amounts.Print(UsePercent, 1)} %",
                    ("inside", Amounts.Print(meanInside, 2)),
                    ("outside", Amounts.Print(meanOutside, 2))
                ),
        ];

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Amounts.Print(Yield.PoundsPerAcre, 0)} lb/ac grew, {Amounts.Print(UsePercent, 0)} % was eaten";

    private ApplicationRate Rate(double grams) =>
        ApplicationRate.FromPoundsPerAcre(RecordMath.YieldPoundsPerAcre(grams, Clipping.SquareFeet));

    private double Deviation(Func<ClippedPair, double> of, double mean) =>
        Math.Sqrt(Clipping.Pairs.Sum(p => (of(p) - mean) * (of(p) - mean)) / (Pairs - 1));
}
