using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What a measured number of the plan would change if it were as far off as such numbers are.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class MeasuredStake
{
    internal MeasuredStake() { }

    /// <summary>Gets what was measured, such as <c>swath</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Gets the reading as the plan states it, such as <c>12 ft</c>.</summary>
    public required string Reading { get; init; }

    /// <summary>Gets how far it may be off, such as <c>2</c>, in the unit of the reading.</summary>
    public required string Error { get; init; }

    /// <summary>Gets who says how far such a reading is off.</summary>
    public required Origin Origin { get; init; }

    /// <summary>Gets the least and the most money: what is paid, counting what is not the same at both ends; for a spreader, what
    /// the seed is worth that falls.</summary>
    public required (decimal Low, decimal High) Cost { get; init; }

    /// <summary>Gets the least and the most seed that is weighed out or, for a spreader, falls.</summary>
    public required (Mass Low, Mass High) Seed { get; init; }

    /// <summary>Gets what is at stake in words, such as <c>5.1 to 7.2 lb of clover</c>; empty where nothing is.</summary>
    public required string AtStake { get; init; }

    /// <summary>Gets the money that rests on the reading.</summary>
    public decimal MoneyAtStake => Cost.High - Cost.Low;

    internal (decimal, double) Rank => (MoneyAtStake, Seed.High.Pounds - Seed.Low.Pounds);

    /// <summary>The reading, its error, and what is at stake.</summary>
    /// <returns>Text such as <c>swath 12 ft give or take 2; 5.1 to 7.2 lb of clover</c>.</returns>
    public override string ToString() => $"{Name} {Reading} give or take {Error}; {AtStake}";
}
