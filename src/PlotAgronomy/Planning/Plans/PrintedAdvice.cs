using System.Runtime.CompilerServices;
using PlotAgronomy.Liming;

namespace PlotAgronomy;

/// <summary>What the laboratory itself recommended.</summary>
/// <remarks>It is only equal to itself; <c>advice with { ... }</c> makes another one.</remarks>
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

    /// <summary>Gets the rate of nitrogen, or null when none was printed.</summary>
    public ApplicationRate? Nitrogen { get; init; }

    /// <summary>Gets the rate of phosphate, or null when none was printed.</summary>
    public ApplicationRate? Phosphate { get; init; }

    /// <summary>Gets the rate of potash, or null when none was printed.</summary>
    public ApplicationRate? Potash { get; init; }

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
