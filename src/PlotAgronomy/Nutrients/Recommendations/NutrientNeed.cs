using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What one system advises for one nutrient, unrounded, and why.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class NutrientNeed
{
    private readonly NeedGrounds grounds;

    internal NutrientNeed(NeedGrounds grounds, PlantNutrient nutrient, double poundsPerAcre, DataStatus status)
    {
        this.grounds = grounds;
        Nutrient = nutrient;
        Rate = ApplicationRate.FromPoundsPerAcre(poundsPerAcre);
        Status = status;
    }

    /// <summary>Gets the nutrient, P as P2O5 and K as K2O.</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets the rate, unrounded. Where a system prints only a range, its lower end.</summary>
    public ApplicationRate Rate { get; }

    /// <summary>Gets the lower end of the advice as published; the rate itself where one figure is published.</summary>
    public ApplicationRate PublishedLow => ApplicationRate.FromPoundsPerAcre(grounds.Low(Rate.PoundsPerAcre));

    /// <summary>Gets the upper end of the advice as published; the rate itself where one figure is published.</summary>
    public ApplicationRate PublishedHigh => ApplicationRate.FromPoundsPerAcre(grounds.High(Rate.PoundsPerAcre));

    /// <summary>Gets the rate rounded as the publisher's tables are, or null where they are not rounded.</summary>
    public ApplicationRate? AsPrinted =>
        RateOf(grounds.PrintedStep is { } step ? SystemMath.ToNearest(Rate.PoundsPerAcre, step) : null);

    /// <summary>Gets whether the rate is a ceiling in law and not advice.</summary>
    public bool IsLegalMaximum => grounds.IsLegalMaximum;

    /// <summary>Gets the part that raises the soil, for build-up systems; else null.</summary>
    public ApplicationRate? BuildUp => RateOf(grounds.RaisingPart);

    /// <summary>Gets the part that replaces what is carried off, for build-up systems; else null.</summary>
    public ApplicationRate? Replacement => RateOf(grounds.ReplacingPart);

    /// <summary>Gets where the reading stands on the system's scale, when it has one.</summary>
    public NutrientRating? Rating => grounds.Rating;

    /// <summary>Gets the reason in one or two sentences.</summary>
    public string Why => grounds.Why;

    /// <summary>Gets the standing of the weakest number in the answer.</summary>
    public DataStatus Status { get; }

    /// <summary>Gets the sources of its numbers.</summary>
    public ImmutableArray<Source> Sources => grounds.Sources;

    internal Origin? Origin => Sources.IsEmpty ? null : new(Sources[0], Status);

    internal ImmutableArray<Finding> Findings => grounds.Findings;

    /// <summary>Nutrient, rate and reason.</summary>
    /// <returns>Text such as <c>P2O5 88.5 lb/ac: ...</c>.</returns>
    public override string ToString()
    {
        string atMost = IsLegalMaximum ? "at most " : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{SoilWords.For(Nutrient)} {atMost}{Rate.PoundsPerAcre:0.0} lb/ac: {Why}"
        );
    }

    /// <summary>The lines of its sum.</summary>
    internal ImmutableArray<WorkedLine> Work() => grounds.Lines();

    private static ApplicationRate? RateOf(double? pounds) =>
        pounds is { } known ? ApplicationRate.FromPoundsPerAcre(known) : null;
}
