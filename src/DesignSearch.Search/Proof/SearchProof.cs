namespace DesignSearch.Search.Proof;

/// <summary>How far branch and bound came in proving the front.</summary>
/// <param name="IsComplete">Whether no box is left that could hold a better point: the front is then the true one.</param>
/// <param name="Bounds">Simulations of optimistic composites.</param>
/// <param name="Evaluations">Points evaluated on the way.</param>
/// <param name="Boxes">Boxes looked at, most of them bounded without a simulation.</param>
/// <param name="Gap">
/// Share of the volume that the front and the bounds of the open boxes dominate together which the front alone does not, 0 … 1; the
/// reference lies a tenth of the front's span behind its worst figures. 0 where the proof is complete, 1 where nothing can be said.
/// </param>
public sealed record SearchProof(bool IsComplete, long Bounds, long Evaluations, long Boxes, double Gap)
{
    /// <summary>Simulations in all.</summary>
    public long Simulations => Bounds + Evaluations;
}
