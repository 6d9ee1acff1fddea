using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>A kind of the coming stand, sown now or standing already, as the limits see it.</summary>
internal sealed record StandMember(CropKind Kind, double Share, bool MustLiveOn)
{
    internal static StandMember[] Of(Blend blend, IReadOnlyList<KindShare> standing)
    {
        var members = new StandMember[blend.Parts.Length + standing.Count];
        for (int i = 0; i < blend.Parts.Length; i++)
        {
            var part = blend.Parts[i];
            members[i] = new(part.Kind, part.ShareOfFullStand.Chosen, part.Component.MustLiveOn);
        }

        for (int i = 0; i < standing.Count; i++)
        {
            var kind = standing[i].Kind;
            members[blend.Parts.Length + i] = new(kind, standing[i].ShareOfFullStand, kind.LifeCycle != LifeCycle.Annual);
        }

        return members;
    }
}
