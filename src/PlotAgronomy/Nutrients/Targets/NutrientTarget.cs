using System.Globalization;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>How much of one nutrient a plot should receive this season, and why.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NutrientTarget
{
    private readonly Func<string> reason;

    private NutrientTarget(PlantNutrient nutrient, ApplicationRate atLeast, ApplicationRate? atMost, Func<string> reason)
    {
        this.reason = reason;
        Nutrient = nutrient;
        AtLeast = atLeast;
        AtMost = atMost;
    }

    /// <summary>Gets the nutrient, in the form of a fertilizer label (P2O5 and K2O, others as the element).</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets the rate that meets the need; zero when none is needed.</summary>
    public ApplicationRate AtLeast { get; }

    /// <summary>Gets the rate that must not be passed, or null when no limit is stated.</summary>
    public ApplicationRate? AtMost { get; }

    /// <summary>Gets the reason in one sentence.</summary>
    public string Reason => reason();

    /// <summary>Creates a target.</summary>
    /// <param name="nutrient">Nutrient in the form of a label.</param>
    /// <param name="atLeast">Rate that meets the need.</param>
    /// <param name="atMost">Rate not to pass; null for none; not below <paramref name="atLeast"/>.</param>
    /// <param name="reason">Reason in one sentence.</param>
    /// <returns>The target.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such nutrient, or the upper limit below the lower.</exception>
    /// <exception cref="ArgumentException">No reason.</exception>
    public static NutrientTarget Create(PlantNutrient nutrient, ApplicationRate atLeast, ApplicationRate? atMost, string reason)
    {
        Guard.NotBlank(reason);
        return Create(nutrient, atLeast, atMost, () => reason);
    }

    /// <summary>A target whose reason is put into words when asked for.</summary>
    internal static NutrientTarget Create(
        PlantNutrient nutrient,
        ApplicationRate atLeast,
        ApplicationRate? atMost,
        Func<string> reason
    )
    {
        Guard.Defined(nutrient);
        if (atMost is { } limit)
        {
            Guard.AtLeast(limit.PoundsPerAcre, atLeast.PoundsPerAcre, "lb/ac (the lower end of the target)", nameof(atMost));
        }

        return new NutrientTarget(nutrient, atLeast, atMost, reason);
    }

    /// <summary>Invariant text such as <c>P2O5 40 to 60 lb/ac: reason</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        var invariant = CultureInfo.InvariantCulture;
        string upTo = AtMost is { } most ? string.Create(invariant, $" to {most.PoundsPerAcre:0.#}") : "";
        return string.Create(invariant, $"{SoilWords.For(Nutrient)} {AtLeast.PoundsPerAcre:0.#}{upTo} lb/ac: {Reason}");
    }
}
