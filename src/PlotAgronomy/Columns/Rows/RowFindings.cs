using System.Collections.Immutable;
using System.Numerics;

namespace PlotAgronomy.Columns;

/// <summary>What the flags of a column mean: one bit for each finding that its rows may have, at most 64, in a fixed
/// order.</summary>
/// <remarks>A finding of a flag tells what holds for every row with it, such as the limits of a method. What differs from row to
/// row is named in its text, not printed ("the row's reading"): ask the typed call for the sentence of one row.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RowFindings
{
    private const int MostFlags = 64;

    private readonly ImmutableArray<Finding> findings;

    private RowFindings(ImmutableArray<Finding> findings)
    {
        this.findings = findings;
        Codes = [.. findings.Select(f => f.Code)];
    }

    /// <summary>Gets the code of each bit, the lowest bit first.</summary>
    public ImmutableArray<string> Codes { get; }

    /// <summary>The flags of a column that may raise these findings, each with a code of its own.</summary>
    internal static RowFindings InOrder(params ReadOnlySpan<Finding> findings)
    {
        var all = ImmutableArray.Create(findings);
        return all.Length <= MostFlags && all.DistinctBy(f => f.Code).Count() == all.Length
            ? new(all)
            : throw new ArgumentException($"Must be at most {MostFlags} findings, each code once.", nameof(findings));
    }

    /// <summary>The flag of a finding.</summary>
    /// <param name="code">Code of the finding, such as <c>soil-ph-buffer-swapped</c>.</param>
    /// <returns>A number with one bit set.</returns>
    /// <exception cref="KeyNotFoundException">The column raises no such finding; the message lists those it does.</exception>
    public ulong FlagOf(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        int bit = Codes.IndexOf(code);
        return bit >= 0
            ? 1UL << bit
            : throw new KeyNotFoundException($"This column raises no finding '{code}'; it raises: {string.Join(", ", Codes)}.");
    }

    /// <summary>The findings of a row.</summary>
    /// <param name="flags">Flags of the row.</param>
    /// <returns>The findings, the lowest bit first; none for 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A bit that the column does not use.</exception>
    public ImmutableArray<Finding> In(ulong flags)
    {
        if (BitOperations.Log2(flags) >= findings.Length && flags != 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(flags),
                flags,
                $"Must be flags of this column, which uses the lowest {findings.Length} bits."
            );
        }

        var found = ImmutableArray.CreateBuilder<Finding>(BitOperations.PopCount(flags));
        for (ulong left = flags; left != 0; left &= left - 1)
        {
            found.Add(findings[BitOperations.TrailingZeroCount(left)]);
        }

        return found.MoveToImmutable();
    }

    /// <summary>The codes of all bits.</summary>
    /// <returns>The codes, the lowest bit first.</returns>
    public override string ToString() => string.Join(", ", Codes);
}
