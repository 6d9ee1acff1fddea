using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>How far apart the systems are for one nutrient, and why. Legal ceilings are not counted: they are not
/// advice.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SystemDisagreement
{
    internal SystemDisagreement() { }

    /// <summary>Gets the nutrient.</summary>
    public required PlantNutrient Nutrient { get; init; }

    /// <summary>Gets the system that asks for least.</summary>
    public required ComparisonRow Lowest { get; init; }

    /// <summary>Gets the system that asks for most.</summary>
    public required ComparisonRow Highest { get; init; }

    /// <summary>Gets the difference between the two.</summary>
    public ApplicationRate Difference =>
        ApplicationRate.FromPoundsPerAcre(SystemMath.Less(Highest.Need.Rate.PoundsPerAcre, Lowest.Need.Rate.PoundsPerAcre));

    /// <summary>Gets why they differ, in words.</summary>
    public string Why
    {
        get
        {
            string highest = NutrientWords.Philosophies[Highest.System.Philosophy];
            string lowest = NutrientWords.Philosophies[Lowest.System.Philosophy];
            return Lowest.System.Philosophy == Highest.System.Philosophy
                ? $"Both follow the idea of {lowest}, but their levels and steps come from different soils and trials."
                : $"{Highest.System.Name} follows the idea of {highest}; {Lowest.System.Name} follows {lowest}.";
        }
    }

    internal WorkedLine Line =>
        NutrientFormulas
            .All["system-disagreement"]
            .Line(
                $"{Amounts.Print(Difference.PoundsPerAcre, 1)} lb/ac",
                ("nutrient", SoilWords.For(Nutrient)),
                ("most", Amounts.Print(Highest.Need.Rate.PoundsPerAcre, 1)),
                ("least", Amounts.Print(Lowest.Need.Rate.PoundsPerAcre, 1))
            );

    /// <summary>Nutrient, systems and difference.</summary>
    /// <returns>Text such as <c>K2O: 0 (Nebraska) to 72.5 (Tri-State), 72.5 lb/ac apart</c>.</returns>
    public override string ToString() =>
        $"{SoilWords.For(Nutrient)}: {Amounts.Print(Lowest.Need.Rate.PoundsPerAcre, 1)} ({Lowest.System.Name}) to "
        + $"{Amounts.Print(Highest.Need.Rate.PoundsPerAcre, 1)} ({Highest.System.Name}), "
        + $"{Amounts.Print(Difference.PoundsPerAcre, 1)} lb/ac apart";
}
