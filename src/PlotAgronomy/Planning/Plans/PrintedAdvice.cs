using System.Runtime.CompilerServices;
using PlotAgronomy.Liming;

namespace PlotAgronomy;

/// <summary>What the laboratory itself recommended.</summary>
/// <remarks>It is only equal to itself; <c>advice with { ... }</c> makes another one.</remarks>
/// <example>
/// <code>
/// var advice = new PrintedAdvice
/// {
///     Crop = "clover, new seeding",
///     Phosphate = ApplicationRate.FromPoundsPerAcre(60),
///     Potash = ApplicationRate.FromPoundsPerAcre(80),
/// };
/// Console.WriteLine(advice);
/// // for clover, new seeding
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record PrintedAdvice
{
    /// <summary>Gets the crop it was printed for; not blank.</summary>
    /// <value><c>a crop it does not name</c> unless stated.</value>
    /// <exception cref="ArgumentException">Blank.</exception>
    public string Crop
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Crop));
    } = UnnamedCrop;

    /// <summary>What a crop is called that nobody names.</summary>
    internal const string UnnamedCrop = "a crop it does not name";

    /// <summary>Gets the rate of lime, or null when none was printed.</summary>
    public PrintedLimeRate? Lime { get; init; }

    /// <summary>Gets the rate of nitrogen, of a printed range its lower end; null when none was printed.</summary>
    public ApplicationRate? Nitrogen { get; init; }

    /// <summary>Gets the upper end where the rate of nitrogen was printed as a range; else null.</summary>
    public ApplicationRate? NitrogenUpTo { get; init; }

    /// <summary>Gets the rate of phosphate, of a printed range its lower end; null when none was printed.</summary>
    public ApplicationRate? Phosphate { get; init; }

    /// <summary>Gets the upper end where the rate of phosphate was printed as a range; else null.</summary>
    public ApplicationRate? PhosphateUpTo { get; init; }

    /// <summary>Gets the rate of potash, of a printed range its lower end; null when none was printed.</summary>
    public ApplicationRate? Potash { get; init; }

    /// <summary>Gets the upper end where the rate of potash was printed as a range; else null.</summary>
    public ApplicationRate? PotashUpTo { get; init; }

    /// <summary>The rates that are printed as ranges.</summary>
    internal IEnumerable<(PlantNutrient Nutrient, ApplicationRate Low, ApplicationRate High)> Ranges =>
        from printed in new[]
        {
            (PlantNutrient.Nitrogen, Nitrogen, NitrogenUpTo),
            (PlantNutrient.Phosphate, Phosphate, PhosphateUpTo),
            (PlantNutrient.Potash, Potash, PotashUpTo),
        }
        where printed is { Item2: not null, Item3: not null }
        select (printed.Item1, printed.Item2!.Value, printed.Item3!.Value);

    /// <summary>The same with one rate where a range was printed.</summary>
    internal PrintedAdvice If(PlantNutrient nutrient, ApplicationRate meant) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => this with { Nitrogen = meant, NitrogenUpTo = null },
            PlantNutrient.Phosphate => this with { Phosphate = meant, PhosphateUpTo = null },
            _ => this with { Potash = meant, PotashUpTo = null },
        };

    /// <summary>Whether this is the very same advice.</summary>
    /// <param name="other">Other advice.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(PrintedAdvice? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The crop it was printed for.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"for {Crop}";
}
