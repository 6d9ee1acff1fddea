using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What one system advises for one nutrient, unrounded, and why.</summary>
/// <remarks>It keeps the rate and what it was asked; words, ratings and findings are made when they are read.</remarks>
[JsonConverter(typeof(NotForJson))]
public abstract partial class NutrientNeed
{
    private protected NutrientNeed(SystemRequest question, PlantNutrient nutrient, double poundsPerAcre, DataStatus status)
    {
        Question = question;
        Nutrient = nutrient;
        Rate = ApplicationRate.FromPoundsPerAcre(poundsPerAcre);
        Status = status;
    }

    /// <summary>Gets the nutrient, P as P2O5 and K as K2O.</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets the rate, unrounded. Where a system prints only a range, its lower end.</summary>
    public ApplicationRate Rate { get; }

    /// <summary>Gets the lower end of the advice as published; the rate itself where one figure is published.</summary>
    public ApplicationRate PublishedLow => ApplicationRate.FromPoundsPerAcre(Low(Rate.PoundsPerAcre));

    /// <summary>Gets the upper end of the advice as published; the rate itself where one figure is published.</summary>
    public ApplicationRate PublishedHigh => ApplicationRate.FromPoundsPerAcre(High(Rate.PoundsPerAcre));

    /// <summary>Gets the rate rounded as the publisher's tables are, or null where they are not rounded.</summary>
    public ApplicationRate? AsPrinted =>
        RateOf(PrintedStep is { } step ? SystemMath.ToNearest(Rate.PoundsPerAcre, step) : null);

    /// <summary>Gets whether the rate is a ceiling in law and not advice.</summary>
    public virtual bool IsLegalMaximum => false;

    /// <summary>Gets the part that raises the soil, for build-up systems; else null.</summary>
    public ApplicationRate? BuildUp => RateOf(RaisingPart);

    /// <summary>Gets the part that replaces what is carried off, for build-up systems; else null.</summary>
    public ApplicationRate? Replacement => RateOf(ReplacingPart);

    /// <summary>Gets where the reading stands on the system's scale, when it has one.</summary>
    public virtual NutrientRating? Rating => null;

    /// <summary>Gets the reason in one or two sentences.</summary>
    public abstract string Why { get; }

    /// <summary>Gets the standing of the weakest number in the answer.</summary>
    public DataStatus Status { get; }

    /// <summary>Gets the sources of its numbers.</summary>
    public abstract ImmutableArray<Source> Sources { get; }

    internal Origin? Origin => Sources.IsEmpty ? null : new(Sources[0], Status);

    internal virtual ImmutableArray<Finding> Findings => [];

    /// <summary>The part that raises the soil, in lb/ac; null for a system without parts.</summary>
    private protected virtual double? RaisingPart => null;

    /// <summary>The part that puts back what leaves, in lb/ac; null for a system without parts.</summary>
    private protected virtual double? ReplacingPart => null;

    /// <summary>Step of the publisher's tables in lb/ac; null where they are not rounded.</summary>
    private protected virtual double? PrintedStep => null;

    private protected SystemRequest Question { get; }

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
    internal abstract ImmutableArray<WorkedLine> Work();

    /// <summary>The lower end of the advice about a rate, in lb/ac.</summary>
    private protected virtual double Low(double rate) => rate;

    /// <summary>The upper end of the advice about a rate, in lb/ac.</summary>
    private protected virtual double High(double rate) => rate;

    private static ApplicationRate? RateOf(double? pounds) =>
        pounds is { } known ? ApplicationRate.FromPoundsPerAcre(known) : null;
}
