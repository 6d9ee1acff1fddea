using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Manganese availability index: the test and the pH together, because manganese locks up as the pH rises.</summary>
/// <remarks>index = constant + per unit x test - 15.2 x pH. New Jersey calls it deficient below 25 and warns above 100
/// (source SOIL-NJ1). Equation B of North Carolina, which the wildlife rows use, is from memory and asked for by name.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ManganeseAvailability : IWorkedResult
{
    private static readonly ImmutableArray<Extractant> Mehlich3 = [Extractant.Mehlich3];

    private readonly ManganeseEquation equation;
    private readonly double test;
    private readonly WaterPh ph;

    private ManganeseAvailability(ManganeseEquation equation, double test, WaterPh ph)
    {
        ArgumentNullException.ThrowIfNull(ph);
        this.equation = equation;
        this.test = test;
        this.ph = ph;
        Index = equation.IndexAt(test, ph.Value);
    }

    /// <summary>Gets the index, a pure number; it may be negative on a limed soil poor in manganese.</summary>
    public double Index { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        equation.Constant.Status == DataStatus.Memory ? [MemoryGate.FindingFor(equation.Title, equation.Constant.Origin)] : [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => equation.Constant.Origin.Sources;

    /// <summary>North Carolina's equation A: 101.2 + 0.6 x Mn-I - 15.2 x pH (source SOIL-NC3).</summary>
    /// <param name="manganese">Manganese reading as a North Carolina index.</param>
    /// <param name="ph">Water pH.</param>
    /// <returns>The index.</returns>
    /// <exception cref="ArgumentException">Not a manganese reading in that unit.</exception>
    public static ManganeseAvailability NorthCarolinaA(SoilReading manganese, WaterPh ph) =>
        new(ManganeseEquation.NorthCarolinaA, Checked(manganese, SoilTestUnit.NorthCarolinaIndex), ph);

    /// <summary>North Carolina's equation B, for the wildlife rows: 108.2 + 0.6 x Mn-I - 15.2 x pH. The 108.2 is from memory
    /// (source SOIL-NC3), so the answer carries the finding <c>data-from-memory</c>.</summary>
    /// <inheritdoc cref="NorthCarolinaA" path="/param"/>
    /// <inheritdoc cref="NorthCarolinaA" path="/returns"/>
    /// <inheritdoc cref="NorthCarolinaA" path="/exception"/>
    public static ManganeseAvailability NorthCarolinaB(SoilReading manganese, WaterPh ph) =>
        new(ManganeseEquation.NorthCarolinaB, Checked(manganese, SoilTestUnit.NorthCarolinaIndex), ph);

    /// <summary>New Jersey's form: 101.7 + 3.75 x ppm - 15.2 x pH (source SOIL-NJ1).</summary>
    /// <param name="manganese">Manganese reading by Mehlich-3 in ppm.</param>
    /// <param name="ph">Water pH.</param>
    /// <returns>The index.</returns>
    /// <exception cref="ArgumentException">Not a manganese reading in that unit.</exception>
    public static ManganeseAvailability NewJersey(SoilReading manganese, WaterPh ph) =>
        NewJersey(Checked(manganese, SoilTestUnit.PartsPerMillion), ph);

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [equation.Line(test, ph.Value, Index)];

    internal static ManganeseAvailability NewJersey(double ppm, WaterPh ph) => new(ManganeseEquation.NewJersey, ppm, ph);

    private static double Checked(SoilReading manganese, SoilTestUnit unit)
    {
        ArgumentNullException.ThrowIfNull(manganese);
        return
            manganese.Analyte == SoilAnalyte.Manganese
            && manganese.Unit == unit
            && ReportReadings.IsAccepted(manganese.Extractant, Mehlich3)
            ? manganese.PrintedValue
            : throw new ArgumentException(
                $"Must be manganese by Mehlich-3 in {SoilWords.For(unit)}, found {manganese}.",
                nameof(manganese)
            );
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
