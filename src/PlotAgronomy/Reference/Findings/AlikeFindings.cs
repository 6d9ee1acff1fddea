using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>Says once what several findings say of several things.</summary>
internal static class AlikeFindings
{
    /// <summary>Findings of one code that differ in their subject alone become one about all of them, in the place of the
    /// first.</summary>
    internal static ImmutableArray<Finding> Joined(IEnumerable<Finding> findings) =>
        [
            .. findings
                .GroupBy(f => f.WithoutSubject)
                .Select(alike => alike.Count() == 1 ? alike.First() : alike.First().AboutAll([.. alike])),
        ];
}
