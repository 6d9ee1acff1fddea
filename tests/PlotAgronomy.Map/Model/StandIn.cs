namespace PlotAgronomy.Map.Model;

/// <summary>A member that runs when another is called: an override, or what implements a member of an interface.</summary>
internal sealed record StandIn(string Called, string Runs);
