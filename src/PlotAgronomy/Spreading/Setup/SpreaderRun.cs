using System.Runtime.CompilerServices;
using System.Text;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A weighed run: one kind through one gate position.</summary>
/// <remarks>It is only equal to itself; <c>run with { ... }</c> makes another one.</remarks>
/// <example>
/// <code>
/// var oats = KindCatalog.Standard.Find("spring oats");
/// var run = new SpreaderRun { Kind = oats, Gate = 4, Weighed = Mass.FromPounds(2.1), Distance = Length.FromFeet(200) };
/// Console.WriteLine(run);
/// // Spring oats at gate 4: 2.1 lb over 200 ft
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record SpreaderRun
{
    /// <summary>Gets the kind that was run.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required CropKind Kind
    {
        get;
        init => field = Guard.NotNull(value, nameof(Kind));
    }

    /// <summary>Gets the gate position on the spreader's own scale; at least 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, NaN or infinite.</exception>
    public required double Gate
    {
        get;
        init => field = Guard.AtLeast(value, 0, "on the spreader's scale", nameof(Gate));
    }

    /// <summary>Gets the weight that came out; above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public required Mass Weighed
    {
        get;
        init => field = Guard.Positive(value, nameof(Weighed));
    }

    /// <summary>Gets the distance walked; above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public required Length Distance
    {
        get;
        init => field = Guard.Positive(value, nameof(Distance));
    }

    /// <summary>Gets the time taken, above 0; null when it was not taken, and then the run tells no flow.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public TimeSpan? Time
    {
        get;
        init
        {
            if (value is { } time)
            {
                Guard.Above(time.TotalSeconds, 0, "s", nameof(Time));
            }

            field = value;
        }
    }

    /// <summary>Whether this is the very same run.</summary>
    /// <param name="other">Other run.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(SpreaderRun? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>Kind, gate, weight and distance.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Kind.ShortName} at gate {Amounts.Print(Gate, 2)}: {Amounts.Print(Weighed, "lb", 2)} over "
        + Amounts.Print(Distance, "ft", 0);

    /// <summary>Written here because the compiler's own would print a quantity in the words of the culture.</summary>
    private bool PrintMembers(StringBuilder text)
    {
        text.Append(ToString());
        return true;
    }
}
