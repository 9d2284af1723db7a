// Package joint is the exact kinematics of universal joints in a row: working angles in space, how
// far a chain of joints leaves the far end from turning evenly, and what that means at a speed.
//
// # Frame
//
// x forward, y left, z up. A part points forward along its Axis; a slope is positive when its front
// end is the higher one, a plan angle when its front end is further left. Axes of a Chain run from
// front to rear. Turns about a part count by the right-hand rule about its forward direction.
//
// # The chain as one matrix
//
// Let θ be how far the driving fork of a joint stands from the plane of its two axes. The driven
// axis has then turned to φ with tan φ = tan θ/cos β (θ and φ both 0 with the driving fork in the
// plane): the direction (cos θ, sin θ) goes over into that of (cos β·cos θ, sin θ), a linear map.
// The driven fork stands 90° round from φ, the fork at the other end of that shaft another ψ (its
// phase), and the plane of the next joint φt (the twist) from the plane of this one: a rotation by
// 90° + ψ − φt. A chain is the product, one real 2×2 matrix M. Its speed ratio det M/|M·e|² lies
// between σ₂/σ₁ and σ₁/σ₂, its singular values, and the single joint that would do the same has
// cos β = σ₂/σ₁.
//
// M is held as the sum of a turning part and a mirroring part, M·e = α·e + γ·ē in complex writing,
// because then σ₁ = |α|+|γ|, σ₂ = ||α|−|γ|| and
//
//	tan²(β/2) = |γ|/|α|
//
// where a joint of angle β brings α = cos²(β/2), γ = −sin²(β/2). Nothing near 1 is ever subtracted
// from 1, so a residual that all but cancels is still right.
//
// A double joint turns its far end as evenly as its near end: α = 1, γ = 0. It is two crosses in a
// short body, and each puts its driven fork 90° round, so its output fork stands in line with its
// input fork: the rotation to the next joint is then ψ − φt.
//
// Source of the single-joint law: J. Carvill, Mechanical Engineer's Data Handbook, 2.4.3, p. 72.
// Source of the rule that planes and forks must match: Elbe technical section, 1 and 4. The matrix
// is derived from the law; the test compares it with crosses simulated in space.
package joint
