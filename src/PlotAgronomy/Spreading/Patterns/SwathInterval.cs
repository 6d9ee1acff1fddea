using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>A run of swaths that are all even enough.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SwathInterval
{
    /// <summary>Gets the narrowest swath of the run.</summary>
    public required Length From { get; init; }

    /// <summary>Gets the widest swath of the run.</summary>
    public required Length To { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(From, "ft", 1)} to {Amounts.Print(To, "ft", 1)}";
}
