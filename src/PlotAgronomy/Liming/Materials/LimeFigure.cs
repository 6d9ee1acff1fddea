using PlotAgronomy.Liming;

namespace PlotAgronomy;

/// <summary>A material's rating in one state's index, such as ENP 1,800 lb/ton. It has no meaning in another index.</summary>
/// <example>
/// <code>
/// Console.WriteLine(LimeFigure.FromPoundsEqualToOneTon(2080));
/// // 96.15 % (share of one ton of North Carolina standard lime in one ton of product)
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeFigure
{
    private LimeFigure(LimeIndex index, double value)
    {
        Index = index;
        Value = value;
    }

    /// <summary>Gets the index.</summary>
    public LimeIndex Index { get; }

    /// <summary>Gets the figure as a pure number in the unit of the index, from 0 to 2.5 times the index's whole.</summary>
    public double Value { get; }

    /// <summary>Gets the figure as a share of what the index gives to pure carbonate powder.</summary>
    public double ShareOfWhole => Value / Index.Whole;

    /// <summary>A figure that the label states in percent.</summary>
    /// <param name="index">Index whose unit is percent.</param>
    /// <param name="percent">Percent as printed; from 0 to 2.5 times the index's whole.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentException">The index counts in lb/ton.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static LimeFigure FromPercent(LimeIndex index, double percent) =>
        FromValue(InUnit(index, "%", nameof(FromPoundsPerTon)), percent);

    /// <summary>A figure that the label states in pounds to the ton of material.</summary>
    /// <param name="index">Index whose unit is lb/ton.</param>
    /// <param name="poundsPerTon">Pounds per ton as printed; from 0 to 2.5 times the index's whole.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentException">The index counts in percent.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static LimeFigure FromPoundsPerTon(LimeIndex index, double poundsPerTon) =>
        FromValue(InUnit(index, "lb/ton", nameof(FromPercent)), poundsPerTon);

    /// <summary>North Carolina's label: the pounds of this product that equal one ton of standard lime.</summary>
    /// <param name="poundsEqualToOneTon">Pounds as printed; above 0.</param>
    /// <returns>The figure: 2000 divided by the pounds, in percent.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or so small that the figure is beyond any lime.</exception>
    public static LimeFigure FromPoundsEqualToOneTon(double poundsEqualToOneTon) =>
        new(
            LimeIndex.NorthCarolinaStandard,
            FromValue(
                LimeIndex.NorthCarolinaStandard,
                LimeStrength.NorthCarolinaLabelPercent(Guard.Above(poundsEqualToOneTon, 0, "lb"))
            ).Value
        )
        {
            PoundsEqualToOneTon = poundsEqualToOneTon,
        };

    /// <summary>A figure in the unit its index has, where that is not typed by a person.</summary>
    internal static LimeFigure FromValue(LimeIndex index, double value)
    {
        ArgumentNullException.ThrowIfNull(index);
        return new(index, Guard.Between(value, 0, LimingConstants.All["largest-share-of-whole"] * index.Whole, index.Unit));
    }

    /// <summary>North Carolina's label as it was read, or null.</summary>
    internal double? PoundsEqualToOneTon { get; private init; }

    private static LimeIndex InUnit(LimeIndex index, string unit, string other)
    {
        ArgumentNullException.ThrowIfNull(index);
        return index.Unit == unit
            ? index
            : throw new ArgumentException($"{index.Name} is stated in {index.Unit}, not in {unit}: use {other}.", nameof(index));
    }

    internal static LimeFigure OfBasis(LimeIndex index, double value) => new(index, value);

    /// <summary>Text such as <c>1,313.6 lb/ton (Ohio effective neutralizing power)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Value, 2)} {Index.Unit} ({Index.Name})";
}
