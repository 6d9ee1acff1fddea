using System.Globalization;

namespace PlotAgronomy.Seeds;

/// <summary>Seeds along a drilled row.</summary>
/// <remarks>Held in seeds per ft of row; another thing than seeds per area. The default is none. Equality is exact.</remarks>
[JsonConverter(typeof(JsonTextConverter<RowDensity>))]
public readonly record struct RowDensity : IJsonText<RowDensity>
{
    private RowDensity(double seedsPerFoot) => SeedsPerFoot = seedsPerFoot;

    /// <summary>Gets the seeds along a foot of row.</summary>
    public double SeedsPerFoot { get; }

    /// <summary>So many seeds along a foot of row.</summary>
    /// <param name="seedsPerFoot">Seeds per ft of row; finite, at least 0.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static RowDensity FromSeedsPerFoot(double seedsPerFoot) => new(Guard.AtLeast(seedsPerFoot, 0, "seeds per ft of row"));

    /// <summary>Invariant text such as <c>23 seeds/ft of row</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{SeedsPerFoot:0.###} seeds/ft of row");

    static string IJsonText<RowDensity>.ToJsonText(RowDensity value) => $"{ExactText.Of(value.SeedsPerFoot)} seeds/ft of row";

    static RowDensity IJsonText<RowDensity>.FromJsonText(string text) =>
        FromSeedsPerFoot(ExactText.Number(text, "seeds/ft of row"));
}
