using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>Finds the method for a soil: by institution, by buffer, or by name.</summary>
/// <remarks>Methods whose numbers were read in their publication are found by institution and buffer. Those from memory
/// answer only when asked for by name (<see cref="ByName"/>). If the laboratory printed a lime rate, use that first
/// (<see cref="PrintedLimeRate"/>).</remarks>
public static class LimeRequirement
{
    private static readonly Lazy<FrozenDictionary<string, LimeMethod>> ById = new(() =>
        Table.Read("Liming/Data/methods.csv", r => new LimeMethod(r)).ToFrozenDictionary(m => m.Id, StringComparer.Ordinal)
    );

    /// <summary>Gets every method, in the order of their ids.</summary>
    public static IReadOnlyList<LimeMethod> Methods => [.. ById.Value.Values.OrderBy(m => m.Id, StringComparer.Ordinal)];

    /// <summary>A method by its name, whatever the status of its numbers.</summary>
    /// <param name="id">Id, such as <c>oregon-2025-sikora</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="KeyNotFoundException">No method has this id; the message lists all.</exception>
    public static LimeMethod ByName(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return ById.Value.TryGetValue(id, out var method)
            ? method
            : throw new KeyNotFoundException(
                $"No lime method has the id '{id}'. There are: {string.Join(", ", Methods.Select(m => m.Id))}."
            );
    }

    /// <summary>The methods of an institution whose numbers were read in their publication.</summary>
    /// <param name="institution">Institution, such as <c>North Carolina</c>.</param>
    /// <returns>The methods; empty when there is none.</returns>
    public static ImmutableArray<LimeMethod> By(string institution)
    {
        Guard.NotBlank(institution);
        return
        [
            .. Methods.Where(m =>
                m.Status == DataStatus.Read && string.Equals(m.Institution, institution, StringComparison.OrdinalIgnoreCase)
            ),
        ];
    }

    /// <summary>The methods of an institution for a buffer whose numbers were read in their publication.</summary>
    /// <param name="buffer">Buffer.</param>
    /// <param name="institution">Institution.</param>
    /// <returns>The methods; empty when there is none.</returns>
    public static ImmutableArray<LimeMethod> By(SoilBuffer buffer, string institution)
    {
        Guard.Defined(buffer);
        return [.. By(institution).Where(m => m.Buffers.Contains(buffer))];
    }

    /// <summary>The methods that accept a sample: its soil is theirs and the reading they need is on the report.</summary>
    /// <param name="sample">Sample.</param>
    /// <param name="includeFromMemory">Whether to name the methods whose numbers are from memory as well.</param>
    /// <returns>The methods, in the order of their ids.</returns>
    public static ImmutableArray<LimeMethod> Accepting(LimeSample sample, bool includeFromMemory = false)
    {
        ArgumentNullException.ThrowIfNull(sample);
        return
        [
            .. Methods.Where(m =>
                (includeFromMemory || m.Status != DataStatus.Memory)
                && m.Soils.Contains(sample.Class)
                && m.Formula.ReadingOf(sample) is not null
            ),
        ];
    }
}
