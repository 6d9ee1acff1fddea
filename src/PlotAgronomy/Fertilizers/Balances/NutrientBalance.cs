namespace PlotAgronomy.Fertilizers;

/// <summary>What a plan gives of one nutrient beside what was asked.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NutrientBalance
{
    /// <summary>Gets the nutrient, in the label's form.</summary>
    public required PlantNutrient Nutrient { get; init; }

    /// <summary>Gets the rate needed; zero when none is.</summary>
    public required ApplicationRate AtLeast { get; init; }

    /// <summary>Gets the rate not to pass, or null.</summary>
    public required ApplicationRate? AtMost { get; init; }

    /// <summary>Gets the rate spread.</summary>
    public required ApplicationRate Delivered { get; init; }

    /// <summary>Whether the need named it; of one that it does not name nobody knows whether any is needed.</summary>
    internal bool IsAsked { get; init; } = true;

    /// <summary>Gets the percent of the need that is spread, at least 0; null when none is needed.</summary>
    public double? PercentOfNeed => AtLeast > ApplicationRate.Zero ? 100 * (Delivered / AtLeast) : null;

    /// <summary>Gets what is missing; zero when the need is met.</summary>
    public ApplicationRate Missing => Excess(AtLeast, Delivered);

    /// <summary>Gets what is spread beyond the need.</summary>
    public ApplicationRate Surplus => Excess(Delivered, AtLeast);

    /// <summary>Gets a value indicating whether the need is met, to a millionth.</summary>
    public bool IsMet => Delivered.PoundsPerAcre >= AtLeast.PoundsPerAcre * (1 - 1e-6);

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>K2O 100 lb/ac of 90 lb/ac (111 %)</c>.</returns>
    public override string ToString() =>
        $"{PlantNutrients.Symbols[Nutrient]} {Amounts.Print(Delivered, decimals: 1)}"
        + (
            PercentOfNeed is { } percent ? $" of {Amounts.Print(AtLeast, decimals: 1)} ({Amounts.Print(percent, 0)} %)"
            : IsAsked ? " (none needed)"
            : " (not asked for)"
        );

    private static ApplicationRate Excess(ApplicationRate over, ApplicationRate under) =>
        ApplicationRate.FromPoundsPerAcre(Math.Max(0, over.PoundsPerAcre - under.PoundsPerAcre));
}
