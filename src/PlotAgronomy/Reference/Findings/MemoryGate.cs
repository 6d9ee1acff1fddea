namespace PlotAgronomy.Reference;

/// <summary>Numbers that were not yet seen in their publication answer only by name, and always with a finding.</summary>
internal static class MemoryGate
{
    /// <summary>The finding that every answer resting on such a number carries.</summary>
    internal static Finding FindingFor(string method, Origin origin) => FindingFor(method, origin.Sources);

    internal static Finding FindingFor(string method, IEnumerable<Source> sources) =>
        FindingCatalog.Create(
            ReferenceCodes.FromMemory,
            ("method", method),
            ("source", string.Join(", ", sources.Select(s => s.Id)))
        );
}
